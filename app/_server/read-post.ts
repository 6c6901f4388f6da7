/** What a form may send; an import of a whole class says its own bound. */
const MOST_BYTES = 256 * 1024;

export type Read =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly status: number; readonly sentence: string };

const refuse = (status: number, sentence: string): Read => ({ ok: false, status, sentence });

/**
 * The JSON that a page of this very server sent. What another site has a browser send is refused, and so is what is too
 * long, before it is all read.
 */
export async function readPost(request: Request, mostBytes = MOST_BYTES): Promise<Read> {
  if (!isFromHere(request.headers))
    return refuse(403, "This was not sent by a page of Plasterline, so it was not done.");
  if (!request.headers.get("content-type")?.startsWith("application/json"))
    return refuse(415, "This was not sent as a page of Plasterline sends it.");
  if (Number(request.headers.get("content-length") ?? 0) > mostBytes) return refuse(413, "This is too much at once.");
  const text = await readText(request, mostBytes);
  if (text === undefined) return refuse(413, "This is too much at once.");
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch {
    return refuse(400, "This did not arrive whole. Try once more.");
  }
}

/** A browser says from which site a page sends, and neither the page nor the reader can change it. */
function isFromHere(headers: Headers): boolean {
  const origin = headers.get("origin");
  const site = headers.get("sec-fetch-site");
  if (origin === null || (site !== null && site !== "same-origin")) return false;
  try {
    return new URL(origin).host === headers.get("host");
  } catch {
    return false;
  }
}

async function readText(request: Request, mostBytes: number): Promise<string | undefined> {
  const parts: Uint8Array[] = [];
  let bytes = 0;
  const reader = request.body?.getReader();
  for (let part = await reader?.read(); part && !part.done; part = await reader?.read()) {
    bytes += part.value.byteLength;
    if (bytes > mostBytes) {
      await reader?.cancel();
      return undefined;
    }
    parts.push(part.value);
  }
  return Buffer.concat(parts).toString("utf8");
}
