import { type FileTrouble, NOT_A_PICTURE, otherFile } from "./file-trouble";

export type ImageFormat = "jpeg" | "png" | "webp" | "heic";

export type Sniffed =
  | { readonly kind: "image"; readonly format: ImageFormat }
  | (FileTrouble & { readonly kind: "refused" });

/** What a file is told by: bytes at a place, as Latin letters. The four that are read come with a format. */
const SIGNATURES: readonly { readonly at: number; readonly bytes: string; readonly is: ImageFormat | string }[] = [
  { at: 0, bytes: "\xff\xd8\xff", is: "jpeg" },
  { at: 0, bytes: "\x89PNG\r\n\x1a\n", is: "png" },
  { at: 8, bytes: "WEBP", is: "webp" },
  { at: 0, bytes: "%PDF-", is: "a PDF" },
  { at: 0, bytes: "GIF8", is: "a GIF" },
  { at: 0, bytes: "II*\0", is: "a TIFF" },
  { at: 0, bytes: "MM\0*", is: "a TIFF" },
  { at: 0, bytes: "BM", is: "a BMP" },
  { at: 0, bytes: "PK\x03\x04", is: "a folder packed as a ZIP" },
];
/** The brand at the head of a file of the HEIF kind: still pictures coded as HEVC, and what else begins so. */
const BRANDS: Readonly<Record<string, ImageFormat | string>> = {
  heic: "heic",
  heix: "heic",
  mif1: "heic",
  hevc: "a moving picture",
  hevx: "a moving picture",
  msf1: "a moving picture",
  avif: "an AVIF",
  avis: "a moving picture",
};
/** Words that a drawing or a page in letters begins with. */
const MARKUP = /^\s*<(\?xml|!doctype|svg|html|!--)/i;
const HEAD = 512;

/**
 * What kind of picture a file is by its first bytes, whatever its name says. A kind that no photograph comes in (a PDF or a
 * drawing in letters among them) is refused by its own name.
 */
export function sniffImage(bytes: Uint8Array): Sniffed {
  const head = latin(bytes.subarray(0, HEAD));
  const is = head.startsWith("ftyp", 4)
    ? brandOf(head)
    : SIGNATURES.find(({ at, bytes: sign }) => head.startsWith(sign, at))?.is;
  if (is === "jpeg" || is === "png" || is === "webp" || is === "heic") return { kind: "image", format: is };
  if (is !== undefined) return { kind: "refused", ...otherFile(is) };
  if (MARKUP.test(head.replace(/^(\xef\xbb\xbf|\xff\xfe|\xfe\xff)/, "").replaceAll("\0", "")))
    return { kind: "refused", ...otherFile("a drawing or a page written in letters (SVG, HTML)") };
  return { kind: "refused", ...NOT_A_PICTURE };
}

/** The kind by the major brand; a general one is made plainer by those that the file also answers to. */
function brandOf(head: string): string {
  const major = head.slice(8, 12);
  const size = Math.min(head.charCodeAt(2) * 256 + head.charCodeAt(3), HEAD);
  const others: readonly string[] = head.slice(16, size).match(/.{4}/gs) ?? [];
  if (major === "mif1" && others.includes("avif") && !others.includes("heic")) return "an AVIF";
  return BRANDS[major] ?? "a film";
}

/** Bytes as Latin letters, one each. */
export function latin(bytes: Uint8Array): string {
  return String.fromCharCode(...bytes);
}
