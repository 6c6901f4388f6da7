/** The most letters of a packed exercise that go into an address: browsers and mail programs cut longer ones. */
export const MOST_PACKED = 30_000;

/** The most bytes that a packed text may come to: as much as a file may hold. */
export const MOST_UNPACKED = 1 << 20;

export type Unpacked = { readonly ok: true; readonly text: string } | { readonly ok: false };

/** A text made short enough for an address: deflated, in the 64 letters that an address may hold. */
export async function packText(text: string): Promise<string> {
  const bytes = await drain(new Blob([text]).stream().pipeThrough(new CompressionStream("deflate-raw")));
  let letters = "";
  for (const byte of bytes ?? []) letters += String.fromCharCode(byte);
  return btoa(letters).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** The text of an address; not ok for one that was cut or changed, and for one that would come to more than a file may hold. */
export async function unpackText(packed: string, most: number = MOST_UNPACKED): Promise<Unpacked> {
  try {
    const letters = atob(packed.replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    const text = await drain(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw")), most);
    return text ? { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(text) } : { ok: false };
  } catch {
    return { ok: false };
  }
}

/** All of a stream; null once it is more than `most` bytes, however much more would come. */
async function drain(stream: ReadableStream<Uint8Array>, most = Number.POSITIVE_INFINITY): Promise<Uint8Array | null> {
  const reader = stream.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    parts.push(value);
    length += value.length;
    if (length > most) {
      await reader.cancel();
      return null;
    }
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
