import { crc32, deflateSync } from "node:zlib";

/** A file's bytes as a browser has them. */
export function toBytes(buffer: Uint8Array): Uint8Array {
  return new Uint8Array(buffer.buffer, buffer.byteOffset, buffer.byteLength);
}

/** A chunk of a PNG. */
export function pngChunk(name: string, data: readonly number[] | Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(name, "latin1"), Buffer.from(data)]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

/** A PNG that says how large it is, with chunks of one's own before its data, which are a single row. */
export function pngOf(width: number, height: number, more: readonly Buffer[]): Uint8Array {
  const size = Buffer.alloc(13);
  size.writeUInt32BE(width, 0);
  size.writeUInt32BE(height, 4);
  size.set([8, 0, 0, 0, 0], 8);
  const data = pngChunk("IDAT", deflateSync(Buffer.alloc(width + 1)));
  const signature = Buffer.from("\x89PNG\r\n\x1a\n", "latin1");
  return toBytes(Buffer.concat([signature, pngChunk("IHDR", size), ...more, data, pngChunk("IEND", [])]));
}
