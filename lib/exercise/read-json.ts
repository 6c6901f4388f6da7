import { findDuplicateKey } from "./find-duplicate-key";
import { isReservedName } from "./limits";
import { jsonPointer, type Problem } from "./problem";

/** The largest file, or line of a `.jsonl`, that is read. */
export const MAX_FILE_BYTES = 1024 * 1024;

/** The deepest nesting that is read; no file of ours needs a tenth of it. */
const MAX_DEPTH = 100;

export type JsonReading =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: Problem };

/**
 * JSON from text, refusing what is too large or nested too deep, names that every object carries, and a name written twice
 * in one object.
 */
export function readJson(text: string): JsonReading {
  if (new TextEncoder().encode(text).length > MAX_FILE_BYTES)
    return refuse("", "the file is larger than 1 MiB", "split the exercise, or take out what is not part of it");
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    return refuse(
      "",
      `the file is not JSON: ${syntaxMessage(error, text)}`,
      "mend it there; a missing comma, quote or bracket is usual",
    );
  }
  const refused = findRefused(value, []);
  if (refused) return { ok: false, problem: refused };
  const twice = findDuplicateKey(text);
  if (twice) return refuse(jsonPointer(twice), `"${twice.at(-1)}" is written twice here`, "keep one, or rename one");
  return { ok: true, value };
}

function refuse(where: string, message: string, hint: string): JsonReading {
  return { ok: false, problem: { where, message, hint } };
}

function reservedName(path: readonly PropertyKey[]): Problem {
  return { where: jsonPointer(path), message: "this name cannot be used", hint: "rename it" };
}

function syntaxMessage(error: unknown, text: string): string {
  const said = error instanceof Error ? error.message : "";
  const position = /position (\d+)/.exec(said)?.[1];
  if (position === undefined)
    return text.trim() === "" ? "it is empty" : "it ends too early, or something in it is out of place";
  const before = text.slice(0, Number(position)).split("\n");
  return `something is out of place on line ${before.length}, column ${(before.at(-1) ?? "").length + 1}`;
}

/** The first reserved name, as a key or as a name that would become one, or nesting too deep; null when there is none. */
function findRefused(value: unknown, path: readonly PropertyKey[]): Problem | null {
  if (typeof value !== "object" || value === null) return null;
  if (path.length >= MAX_DEPTH)
    return {
      where: jsonPointer(path),
      message: `lists and objects stand more than ${MAX_DEPTH} deep`,
      hint: "flatten it",
    };
  for (const [key, inner] of Object.entries(value)) {
    if (!Array.isArray(value) && isReservedName(key)) return reservedName([...path, key]);
    if (typeof inner === "string" && ["id", "from", "to", "point"].includes(key) && isReservedName(inner))
      return reservedName([...path, key]);
    if (typeof inner !== "object") continue;
    const found = findRefused(inner, [...path, key]);
    if (found !== null) return found;
  }
  return null;
}
