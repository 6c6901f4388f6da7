/** Has the server put an exercise on paper, which keeps nothing of it: the file with its name, or why there is none, in a sentence. */
export async function fetchOwnFile(
  address: string,
  text: string,
  signal?: AbortSignal,
): Promise<
  { readonly ok: true; readonly blob: Blob; readonly name: string } | { readonly ok: false; readonly say: string }
> {
  try {
    const answer = await fetch(address, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ text }),
      ...(signal ? { signal } : {}),
    });
    if (!answer.ok) return { ok: false, say: await answer.text() };
    const name = /filename="([^"]+)"/.exec(answer.headers.get("content-disposition") ?? "")?.[1] ?? "plasterline";
    return { ok: true, blob: await answer.blob(), name };
  } catch {
    return { ok: false, say: "The server did not answer. Try once more." };
  }
}

/** Fetches a file and saves it; an empty sentence when that went well. */
export async function saveOwnFile(address: string, text: string): Promise<string> {
  const fetched = await fetchOwnFile(address, text);
  if (!fetched.ok) return fetched.say;
  const link = document.createElement("a");
  link.href = URL.createObjectURL(fetched.blob);
  link.download = fetched.name;
  link.click();
  URL.revokeObjectURL(link.href);
  return "";
}
