import { readFileSync } from "node:fs";
import fc from "fast-check";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { decodePhoto } from "@/lib/cli/photo/decode-photo";
import { MOST_BYTES, readImageHead } from "@/lib/photo/files/read-image-head";
import { seeded } from "@/tests/seeded";
import { pngChunk, pngOf, toBytes } from "./picture-files";

const HEIC = new Uint8Array(readFileSync("tests/photo/files/fixtures/sheet.heic"));

function picture(width = 640, height = 480) {
  return sharp({ create: { width, height, channels: 3, background: "#778899" } });
}

function plain(background: string) {
  return sharp({ create: { width: 320, height: 320, channels: 3, background } });
}

const jpeg = () => picture().jpeg().toBuffer();

describe("the head of a picture's file", () => {
  it.each<[string, () => Promise<Buffer>, string]>([
    ["a JPEG", jpeg, "jpeg"],
    ["a progressive JPEG", () => picture().jpeg({ progressive: true }).toBuffer(), "jpeg"],
    ["a grey JPEG", () => picture().greyscale().jpeg().toBuffer(), "jpeg"],
    ["a PNG", () => picture().png().toBuffer(), "png"],
    ["a PNG with holes", () => picture().ensureAlpha(0.5).png().toBuffer(), "png"],
    ["a WebP", () => picture().webp().toBuffer(), "webp"],
    ["a WebP without loss", () => picture().webp({ lossless: true }).toBuffer(), "webp"],
    ["a WebP with holes", () => picture().ensureAlpha(0.5).webp().toBuffer(), "webp"],
    ["a JPEG with a small copy of itself", async () => withThumbnail(await jpeg()), "jpeg"],
  ])("tells %s and its size", async (_, make, format) => {
    expect(readImageHead(toBytes(await make()))).toEqual({ kind: "image", format, width: 640, height: 480 });
  });

  it("tells a HEIC and its size, not that of its tiles", () => {
    expect(readImageHead(HEIC)).toMatchObject({ kind: "image", format: "heic" });
    const { width, height } = readImageHead(HEIC) as { width: number; height: number };
    expect(width * height).toBeGreaterThan(2_400_000);
  });

  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="640" height="480"/>';
  const frames = async () => {
    const colours = await Promise.all(["#112233", "#aabbcc"].map((background) => plain(background).png().toBuffer()));
    return sharp(colours, { join: { animated: true } });
  };

  it.each<[string, () => Promise<Uint8Array> | Uint8Array, string, RegExp]>([
    ["nothing", () => new Uint8Array(0), "not a picture", /not a picture/],
    ["words", () => Buffer.from("Dear teacher, here is my sketch."), "not a picture", /not a picture/],
    ["a drawing in letters", () => Buffer.from(svg), "other kind", /SVG/],
    ["one after a byte order mark", () => Buffer.from(`\ufeff  <?xml version="1.0"?>${svg}`), "other kind", /SVG/],
    ["one in sixteen bits", () => Buffer.from(`\ufeff${svg}`, "utf16le"), "other kind", /SVG/],
    ["a PDF", () => Buffer.from("%PDF-1.7\n%\u00e2\u00e3"), "other kind", /a PDF/],
    ["a TIFF", () => picture().tiff().toBuffer(), "other kind", /a TIFF/],
    ["a GIF", () => picture().gif().toBuffer(), "other kind", /a GIF/],
    ["an AVIF", () => picture(64, 64).avif({ effort: 0 }).toBuffer(), "other kind", /an AVIF/],
    ["a film", () => Buffer.from("\0\0\0\x18ftypmp42\0\0\0\0mp42isom", "latin1"), "other kind", /a film/],
    ["a ZIP", () => Buffer.from("PK\x03\x04rest", "latin1"), "other kind", /ZIP/],
    ["a moving WebP", async () => (await frames()).webp().toBuffer(), "moving", /moves/],
    ["a moving PNG", () => pngOf(640, 480, [pngChunk("acTL", [0, 0, 0, 2, 0, 0, 0, 0])]), "moving", /moves/],
    ["a JPEG in four colours", () => picture().toColourspace("cmyk").jpeg().toBuffer(), "printing colours", /CMYK/],
    ["one pixel", () => picture(1, 1).png().toBuffer(), "too small", /1 by 1 pixels/],
    ["a ribbon", () => picture(4000, 8).jpeg().toBuffer(), "too small", /4000 by 8/],
    ["200 megapixels", () => pngOf(20_000, 10_000, []), "too large", /20000 by 10000 pixels, more than the 60 million/],
    ["a PNG without pixels", () => pngOf(0, 480, []), "damaged", /damaged/],
    ["a file of 81 MB", () => new Uint8Array(MOST_BYTES + 1), "too large", /larger than 80 MB/],
  ])("refuses %s plainly", async (_, make, why, say) => {
    const read = readImageHead(toBytes(await make()));
    expect(read).toMatchObject({ kind: "refused", why });
    if (read.kind === "refused") {
      expect(read.say).toMatch(say);
      expect(read.remedy).toMatch(/\.$/);
    }
  });

  it.each([
    ["JPEG", jpeg],
    ["PNG", () => picture().png().toBuffer()],
    ["WebP", () => picture().webp().toBuffer()],
    ["HEIC", async () => HEIC],
  ])("finds a %s cut short anywhere damaged, or no picture at all", async (_, make) => {
    const whole = toBytes(await make());
    for (const share of [0, 0.001, 0.01, 0.1, 0.3, 0.5, 0.9, 0.99]) {
      const cut = whole.slice(0, Math.floor(share * whole.length));
      const read = readImageHead(cut);
      expect(read).toMatchObject({ kind: "refused" });
      if (read.kind === "refused") expect(["damaged", "not a picture"]).toContain(read.why);
      expect(await decodePhoto(cut)).toEqual(read);
    }
  });

  it("neither throws nor finds a size in a file with bytes changed at random that is no number of pixels", async () => {
    const files = [
      await jpeg(),
      await picture().png().toBuffer(),
      await picture().webp().toBuffer(),
      Buffer.from(HEIC),
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...files),
        fc.array(fc.tuple(fc.double({ min: 0, max: 0.999, noNaN: true }), fc.nat(255)), {
          minLength: 1,
          maxLength: 20,
        }),
        (file, changes) => {
          const bytes = toBytes(file).slice();
          for (const [place, value] of changes) bytes[Math.floor(place ** 3 * bytes.length)] = value;
          const read = readImageHead(bytes);
          if (read.kind === "image") expect(read.width * read.height).toBeGreaterThan(0);
        },
      ),
      seeded,
    );
  });
});

/** A JPEG that carries another, smaller one where cameras do: in a segment of its own kind, before the picture. */
async function withThumbnail(whole: Buffer): Promise<Buffer> {
  const small = await picture(32, 24).jpeg().toBuffer();
  const head = Buffer.from([0xff, 0xe1, (small.length + 2) >> 8, (small.length + 2) & 255]);
  return Buffer.concat([whole.subarray(0, 2), head, small, whole.subarray(2)]);
}
