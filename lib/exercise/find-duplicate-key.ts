const TOKEN = /"(?:[^"\\]|\\.)*"|[{}[\],:]/gs;

type Frame = { readonly keys: Set<string> | null; key: string | number; expectKey: boolean };

/**
 * The path of the first name written twice in one object of a JSON text, or null. `JSON.parse` keeps the later one in
 * silence, and a corner would be lost. The text must be well-formed JSON.
 */
export function findDuplicateKey(text: string): readonly (string | number)[] | null {
  const stack: Frame[] = [];
  for (const [token] of text.matchAll(TOKEN)) {
    const top = stack.at(-1);
    if (token === "{") stack.push({ keys: new Set(), key: "", expectKey: true });
    else if (token === "[") stack.push({ keys: null, key: 0, expectKey: false });
    else if (token === "}" || token === "]") stack.pop();
    else if (token === "," && top) {
      if (top.keys) top.expectKey = true;
      else top.key = (top.key as number) + 1;
    } else if (token.startsWith('"') && top?.keys && top.expectKey) {
      const key = JSON.parse(token) as string;
      top.key = key;
      if (top.keys.has(key)) return stack.map((frame) => frame.key);
      top.keys.add(key);
      top.expectKey = false;
    }
  }
  return null;
}
