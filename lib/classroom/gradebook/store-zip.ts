import { crc32 } from "node:zlib";

export type ZipFile = { readonly name: string; readonly text: string };

/** "Made for version 2.0": nothing is used that came later. */
const VERSION = 20;
/** Names are UTF-8 (bit 11 of the flags). */
const UTF_8 = 0x0800;
/** The first day that the archive's clock knows: what is in an archive must not depend on when it was made. */
const FIRST_DAY = (1 << 5) | 1;

/**
 * An archive of a few text files, not compressed. Layout by the file format's published note, APPNOTE.TXT 6.3.10, sections
 * 4.3.7 (before each file), 4.3.12 (the list at the end) and 4.3.16 (the end); from memory, and held to another program's
 * reader in a test.
 */
export function storeZip(files: readonly ZipFile[]): Uint8Array {
  const parts: Buffer[] = [];
  const list: Buffer[] = [];
  let at = 0;
  for (const { name, text } of files) {
    const [title, body] = [Buffer.from(name, "utf8"), Buffer.from(text, "utf8")];
    const about = aboutFile(title, body);
    const before = Buffer.concat([words(0x04034b50), about, title]);
    list.push(Buffer.concat([words(0x02014b50), halves(VERSION), about, halves(0, 0, 0), words(0, at), title]));
    parts.push(before, body);
    at += before.length + body.length;
  }
  const listed = Buffer.concat(list);
  const end = [words(0x06054b50), halves(0, 0, files.length, files.length), words(listed.length, at), halves(0)];
  return new Uint8Array(Buffer.concat([...parts, listed, ...end]));
}

/** What stands both before a file and in the list. */
function aboutFile(title: Buffer, body: Buffer): Buffer {
  return Buffer.concat([
    halves(VERSION, UTF_8, 0, 0, FIRST_DAY),
    words(crc32(body), body.length, body.length),
    halves(title.length, 0),
  ]);
}

function halves(...values: readonly number[]): Buffer {
  const bytes = Buffer.alloc(2 * values.length);
  for (const [i, value] of values.entries()) bytes.writeUInt16LE(value, 2 * i);
  return bytes;
}

function words(...values: readonly number[]): Buffer {
  const bytes = Buffer.alloc(4 * values.length);
  for (const [i, value] of values.entries()) bytes.writeUInt32LE(value, 4 * i);
  return bytes;
}
