/** The most letters of a packed exercise that go into an address: browsers and mail programs cut longer ones. */
export const MOST_PACKED = 30_000;

/** The most bytes that a packed text may come to: as much as a file may hold. */
export const MOST_UNPACKED = 1 << 20;

export type Unpacked = { readonly ok: true; readonly text: string } | { readonly ok: false };

/** A text made short enough for an address: deflated, in the 64 letters that an address may hold. */
export async function packText(text: string): Promise<string> {
  const bytes = await sendThrough(new CompressionStream("deflate-raw"), new TextEncoder().encode(text));
  let letters = "";
  for (const byte of bytes ?? []) letters += String.fromCharCode(byte);
  return btoa(letters).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** The text of an address; not ok for one that was cut or changed, and for one that would come to more than a file may hold. */
export async function unpackText(packed: string, most: number = MOST_UNPACKED): Promise<Unpacked> {
  try {
    const letters = atob(packed.replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    const text = await sendThrough(new DecompressionStream("deflate-raw"), bytes, most);
    return text ? { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(text) } : { ok: false };
  } catch {
    return { ok: false };
  }
}

/** What comes out of a stream for some bytes; null once it is more than `most` bytes, however much more would come. */
async function sendThrough(
  { readable, writable }: CompressionStream | DecompressionStream,
  bytes: Uint8Array<ArrayBuffer>,
  most = Number.POSITIVE_INFINITY,
): Promise<Uint8Array | null> {
  const writer = writable.getWriter();
  // What goes wrong in writing goes wrong in reading as well, and is told there.
  const ignore = () => {};
  writer.write(bytes).catch(ignore);
  writer.close().catch(ignore);
  const reader = readable.getReader();
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
