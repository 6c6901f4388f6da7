import { createReadStream } from "node:fs";

const NEWLINE = 0x0a;

/**
 * The lines of a file, read bit by bit. Only a newline ends a line (a text in JSON may hold the other separators of
 * Unicode), a carriage return before it is dropped. Of a line longer than `most` bytes only the first `most` + 1 are kept.
 */
export async function* readLines(path: string, most: number): AsyncGenerator<string> {
  let kept: Buffer[] = [];
  let size = 0;
  const keep = (part: Buffer) => {
    const room = most + 1 - size;
    if (room <= 0 || part.length === 0) return;
    kept.push(part.subarray(0, room));
    size += Math.min(part.length, room);
  };
  const take = () => {
    const line = Buffer.concat(kept).toString("utf8").replace(/\r$/, "");
    kept = [];
    size = 0;
    return line;
  };
  for await (const chunk of createReadStream(path) as AsyncIterable<Buffer>) {
    let from = 0;
    for (let end = chunk.indexOf(NEWLINE); end >= 0; end = chunk.indexOf(NEWLINE, from)) {
      keep(chunk.subarray(from, end));
      yield take();
      from = end + 1;
    }
    keep(chunk.subarray(from));
  }
  if (size > 0) yield take();
}
