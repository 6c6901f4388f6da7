import sharp from "sharp";

/** Tags of TIFF 6.0 that tell where the strips lie. */
const [WIDTH, HEIGHT, PHOTOMETRIC, OFFSETS, ROWS, COUNTS] = [256, 257, 262, 273, 278, 279] as const;
const LONG = 4;
/** Darker than this, of 255, is ink. */
const INK = 150;
const LETTER_PT = [612, 792] as const;

/** A page as most copiers send it in black and white: CCITT group 4 (ITU-T T.6), in the strips that a TIFF has it in. */
export async function faxPdf(picture: Buffer): Promise<Buffer> {
  const tiff = await sharp(picture)
    .greyscale()
    .threshold(INK)
    .toColourspace("b-w")
    .tiff({ compression: "ccittfax4", bitdepth: 1 })
    .toBuffer();
  const tags = readTags(tiff);
  const one = (tag: number) => tags.get(tag)?.[0] ?? 0;
  const [width, height, rows] = [one(WIDTH), one(HEIGHT), one(ROWS)];
  const strips = (tags.get(OFFSETS) ?? []).map((at, i) => tiff.subarray(at, at + (tags.get(COUNTS)?.[i] ?? 0)));
  const [across, up] = LETTER_PT;
  const drawn = strips.map((_, i) => {
    const [top, bottom] = [i * rows, Math.min(height, (i + 1) * rows)];
    return `q ${across} 0 0 ${((bottom - top) * up) / height} 0 ${up - (bottom * up) / height} cm /S${i} Do Q`;
  });
  const blackIs1 = one(PHOTOMETRIC) === 0 ? "false" : "true";
  const images = strips.map((strip, i) => {
    const lines = Math.min(rows, height - i * rows);
    const head = `/Type /XObject /Subtype /Image /Width ${width} /Height ${lines} /ColorSpace /DeviceGray /BitsPerComponent 1`;
    const decode = `/Filter /CCITTFaxDecode /DecodeParms << /K -1 /Columns ${width} /Rows ${lines} /BlackIs1 ${blackIs1} >>`;
    return stream(`${head} ${decode}`, strip);
  });
  const names = strips.map((_, i) => `/S${i} ${i + 5} 0 R`).join(" ");
  return book([
    Buffer.from("<< /Type /Catalog /Pages 2 0 R >>"),
    Buffer.from("<< /Type /Pages /Kids [3 0 R] /Count 1 >>"),
    Buffer.from(
      `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 ${across} ${up}] /Contents 4 0 R /Resources << /XObject << ${names} >> >> >>`,
    ),
    stream("", Buffer.from(drawn.join("\n"))),
    ...images,
  ]);
}

function stream(head: string, data: Buffer): Buffer {
  return Buffer.concat([
    Buffer.from(`<< ${head} /Length ${data.length} >>\nstream\n`),
    data,
    Buffer.from("\nendstream"),
  ]);
}

/** Objects numbered from 1, the first the catalogue, with their table at the end (ISO 32000-1, 7.5). */
function book(objects: readonly Buffer[]): Buffer {
  const parts: Buffer[] = [Buffer.from("%PDF-1.5\n")];
  let at = parts[0]?.length ?? 0;
  const places: number[] = [];
  for (const [i, object] of objects.entries()) {
    const part = Buffer.concat([Buffer.from(`${i + 1} 0 obj\n`), object, Buffer.from("\nendobj\n")]);
    places.push(at);
    parts.push(part);
    at += part.length;
  }
  const rows = places.map((place) => `${String(place).padStart(10, "0")} 00000 n \n`).join("");
  const table = `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${rows}`;
  const end = `trailer << /Size ${objects.length + 1} /Root 1 0 R >>\nstartxref\n${at}\n%%EOF\n`;
  return Buffer.concat([...parts, Buffer.from(table + end)]);
}

/** The numbers of each tag in the first directory of a little-endian TIFF. */
function readTags(tiff: Buffer): ReadonlyMap<number, readonly number[]> {
  const from = tiff.readUInt32LE(4);
  const tags = new Map<number, readonly number[]>();
  for (let i = 0; i < tiff.readUInt16LE(from); i++) {
    const at = from + 2 + i * 12;
    const [tag, kind, count] = [tiff.readUInt16LE(at), tiff.readUInt16LE(at + 2), tiff.readUInt32LE(at + 4)];
    const bytes = kind === LONG ? 4 : 2;
    const first = count * bytes <= 4 ? at + 8 : tiff.readUInt32LE(at + 8);
    const read = (place: number) => (kind === LONG ? tiff.readUInt32LE(place) : tiff.readUInt16LE(place));
    tags.set(
      tag,
      Array.from({ length: count }, (_, n) => (first + (n + 1) * bytes <= tiff.length ? read(first + n * bytes) : 0)),
    );
  }
  return tags;
}
