import { crc32, deflateSync } from "node:zlib";
import sharp from "sharp";

/** Bytes that someone sends as a photograph. */
export type StressFile = { readonly what: string; readonly bytes: Uint8Array };

const TEXT = new TextEncoder();
const GREY = { r: 200, g: 198, b: 190 };
/** 200 megapixels, and more than a header of one kind can say in the next. */
const HUGE = [20_000, 10_000] as const;

/** Files that are no photograph, or none that can be read: each must be refused in a sentence. */
export async function hopelessFiles(photograph: Uint8Array): Promise<readonly StressFile[]> {
  const small = blank(40, 30);
  const [jpeg, png, webp] = await Promise.all([
    small.clone().jpeg().toBuffer(),
    small.clone().png().toBuffer(),
    small.clone().webp().toBuffer(),
  ]);
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" width="9000" height="9000"><rect width="9000" height="9000"/></svg>';
  return [
    { what: "nothing", bytes: new Uint8Array(0) },
    { what: "one byte", bytes: Uint8Array.of(0xff) },
    { what: "text", bytes: TEXT.encode("This is not a photograph.") },
    { what: "noise", bytes: Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919) % 251) },
    { what: "an SVG", bytes: TEXT.encode(svg) },
    { what: "an SVG with a declaration", bytes: TEXT.encode(`<?xml version="1.0"?>\n${svg}`) },
    { what: "a PDF", bytes: TEXT.encode("%PDF-1.7\n1 0 obj\n<< /Type /Catalog >>\nendobj\n%%EOF\n") },
    { what: "a page of the web", bytes: TEXT.encode("<!doctype html><html><body>A photograph</body></html>") },
    { what: "a JPEG's first twenty bytes", bytes: jpeg.subarray(0, 20) },
    { what: "half a photograph", bytes: photograph.subarray(0, Math.floor(photograph.length / 2)) },
    { what: "a PNG without its end", bytes: png.subarray(0, png.length - 30) },
    { what: "a WebP without its end", bytes: webp.subarray(0, Math.floor(webp.length / 2)) },
    { what: "a PNG's signature alone", bytes: png.subarray(0, 8) },
    { what: "a PNG that says 200 megapixels", bytes: pngOf(...HUGE, deflateSync(new Uint8Array(1000))) },
    { what: "a PNG that says a side of nothing", bytes: pngOf(0, 100, deflateSync(new Uint8Array(10))) },
    {
      what: "a PNG that says four thousand million pixels a side",
      bytes: pngOf(0xffff_ffff, 0xffff_ffff, new Uint8Array(0)),
    },
    { what: "a JPEG that says 200 megapixels", bytes: jpegSaying(jpeg, ...HUGE) },
    { what: "a WebP that says 268 megapixels", bytes: webpSaying(16_384, 16_384) },
    {
      what: "a HEIC's first bytes",
      bytes: Uint8Array.from([0, 0, 0, 24, ...TEXT.encode("ftypheic"), 0, 0, 0, 0, ...TEXT.encode("mif1heic")]),
    },
    {
      what: "an AVIF's first bytes",
      bytes: Uint8Array.from([0, 0, 0, 24, ...TEXT.encode("ftypavif"), 0, 0, 0, 0, ...TEXT.encode("mif1avif")]),
    },
    {
      what: "a JPEG for the press, in four inks",
      bytes: await sharp(photograph).resize(800).toColourspace("cmyk").jpeg().toBuffer(),
    },
    { what: "a PNG of one pixel", bytes: await blank(1, 1).png().toBuffer() },
    { what: "a JPEG of one pixel", bytes: await blank(1, 1).jpeg().toBuffer() },
    { what: "a picture one pixel high", bytes: await blank(4000, 1).png().toBuffer() },
    { what: "an animated PNG", bytes: await animatedPng() },
    { what: "an animated GIF", bytes: await animated().gif().toBuffer() },
    { what: "an animated WebP", bytes: await animated().webp().toBuffer() },
  ];
}

/** Files that are odd, and a picture all the same. */
export async function oddFiles(photograph: Uint8Array): Promise<readonly StressFile[]> {
  const small = () => sharp(photograph).resize(1600);
  return [
    { what: "a grey JPEG", bytes: await small().greyscale().jpeg().toBuffer() },
    { what: "a progressive JPEG", bytes: await small().jpeg({ progressive: true }).toBuffer() },
    { what: "a PNG of 16 bits", bytes: await small().toColourspace("rgb16").png().toBuffer() },
    { what: "a PNG with a palette", bytes: await small().png({ palette: true, colours: 64 }).toBuffer() },
    { what: "a PNG that is half clear", bytes: await small().ensureAlpha(0.5).png().toBuffer() },
    { what: "a WebP", bytes: await small().webp({ quality: 85 }).toBuffer() },
    {
      what: "a JPEG with something after its end",
      bytes: Uint8Array.from([...(await small().jpeg().toBuffer()), ...TEXT.encode("more")]),
    },
  ];
}

/** Pictures without a sheet: read, and then found to show none. */
export async function emptyPictures(): Promise<readonly StressFile[]> {
  return [
    { what: "a small one", bytes: await blank(400, 300).png().toBuffer() },
    { what: "a blank page", bytes: await blank(1500, 2000).jpeg().toBuffer() },
  ];
}

function blank(width: number, height: number) {
  return sharp({ create: { width, height, channels: 3, background: GREY } });
}

function animated() {
  const frame = (level: number) => new Array<number>(3 * 20 * 20).fill(level);
  const pixels = Uint8Array.from([...frame(40), ...frame(120), ...frame(200)]);
  return sharp(pixels, { raw: { width: 20, height: 60, channels: 3, pageHeight: 20 } });
}

/** A PNG by its own specification (W3C, PNG third edition): 8 bits of grey, whatever its rows hold. */
function pngOf(width: number, height: number, rows: Uint8Array): Uint8Array {
  return Buffer.concat([SIGNATURE, header(width, height), chunk("IDAT", rows), chunk("IEND", new Uint8Array(0))]);
}

const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);

function header(width: number, height: number): Uint8Array {
  return chunk("IHDR", Uint8Array.from([...word(width), ...word(height), 8, 0, 0, 0, 0]));
}

/** Two frames by the same specification's acTL, fcTL and fdAT. */
async function animatedPng(): Promise<Uint8Array> {
  const rows = deflateSync(new Uint8Array(20 * 21));
  const frame = (number: number) =>
    chunk(
      "fcTL",
      Uint8Array.from([...word(number), ...word(20), ...word(20), ...word(0), ...word(0), 0, 1, 0, 10, 0, 0]),
    );
  return Buffer.concat([
    SIGNATURE,
    header(20, 20),
    chunk("acTL", Uint8Array.from([...word(2), ...word(0)])),
    frame(0),
    chunk("IDAT", rows),
    frame(1),
    chunk("fdAT", Buffer.concat([Uint8Array.from(word(2)), rows])),
    chunk("IEND", new Uint8Array(0)),
  ]);
}

function chunk(kind: string, data: Uint8Array): Uint8Array {
  const body = Buffer.concat([TEXT.encode(kind), data]);
  return Buffer.concat([Uint8Array.from(word(data.length)), body, Uint8Array.from(word(crc32(body)))]);
}

function word(value: number): readonly number[] {
  return [value >>> 24, (value >>> 16) & 255, (value >>> 8) & 255, value & 255];
}

/** A JPEG whose frame header (marker SOF0, ITU-T T.81) says another size. */
function jpegSaying(jpeg: Uint8Array, width: number, height: number): Uint8Array {
  const bytes = Uint8Array.from(jpeg);
  const at = bytes.findIndex((byte, i) => byte === 0xff && bytes[i + 1] === 0xc0);
  if (at < 0) throw new Error("The JPEG has no frame header of the usual kind.");
  bytes.set([height >> 8, height & 255, width >> 8, width & 255], at + 5);
  return bytes;
}

/** An extended WebP's header (RFC 9649): the canvas it says, and nothing in it. */
function webpSaying(width: number, height: number): Uint8Array {
  const three = (value: number) => [value & 255, (value >> 8) & 255, (value >> 16) & 255];
  const body = [...TEXT.encode("WEBPVP8X"), 10, 0, 0, 0, 0, 0, 0, 0, ...three(width - 1), ...three(height - 1)];
  return Uint8Array.from([...TEXT.encode("RIFF"), body.length, 0, 0, 0, ...body]);
}
