import type { z } from "zod";

/** What is wrong with a file: where (a JSON pointer), what, and how to mend it. */
export type Problem = { readonly where: string; readonly message: string; readonly hint: string };

/** Between the notes on two unknown fields of one object, in the message zod carries. */
export const UNKNOWN_FIELD_BREAK = "\n";

/** A JSON pointer (RFC 6901) to a path of keys. */
export function jsonPointer(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${String(key).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}

/** The problems zod found, in plain words. */
export function problemsOf(error: z.core.$ZodError, input: unknown): readonly Problem[] {
  return error.issues.flatMap((issue) => problemsOfIssue(issue, input));
}

function problemsOfIssue(issue: z.core.$ZodIssue, input: unknown): readonly Problem[] {
  if (issue.code === "unrecognized_keys") {
    const hints = issue.message.split(UNKNOWN_FIELD_BREAK);
    return issue.keys.map((key, i) => ({
      where: jsonPointer([...issue.path, key]),
      message: `there is no field "${clip(key)}" here`,
      hint: hints[i] ?? "remove it",
    }));
  }
  const found = valueAt(input, issue.path);
  const where = jsonPointer(issue.path);
  const name = nameOf(issue.path);
  if (found === undefined) return [{ where, message: `${name} is missing`, hint: missingHint(issue) }];
  const [message, hint] = wordsFor(issue);
  return [{ where, message: `${name} ${message}; this is ${show(found)}`, hint }];
}

/** What is wrong and how to mend it, by kind of issue; a message of our own is written "what is wrong | how to mend it". */
function wordsFor(issue: z.core.$ZodIssue): readonly [string, string] {
  if (issue.code === "invalid_type")
    return [`must be ${withArticle(issue.expected)}`, `give ${withArticle(issue.expected)}`];
  if (issue.code === "invalid_value") {
    const list = issue.values.map((value) => JSON.stringify(value)).join(", ");
    return [`must be one of ${list}`, `write one of ${list}`];
  }
  if (issue.code === "invalid_key")
    return ["has a name that cannot be used", (issue.issues[0]?.message ?? "rename it").replace(" | ", ": ")];
  const [message = "", hint] = issue.message.split(" | ");
  return [message, hint ?? "see the format"];
}

function missingHint(issue: z.core.$ZodIssue): string {
  if (issue.code === "invalid_type") return `add it: ${withArticle(issue.expected)}`;
  if (issue.code === "invalid_value")
    return `add it: ${issue.values.map((value) => JSON.stringify(value)).join(" or ")}`;
  return `add it: ${issue.message.split(" | ").at(-1)}`;
}

const EXPECTED: Readonly<Record<string, string>> = {
  array: "a list",
  object: "an object in braces",
  record: "an object in braces",
  tuple: "a list",
  string: "text in quotes",
  number: "a finite number",
  int: "a whole number",
};

function withArticle(expected: string): string {
  return EXPECTED[expected] ?? expected;
}

/** The field a path leads to, as a message names it: `"height"`, or `entry 2 of "at"` in a list. */
function nameOf(path: readonly PropertyKey[]): string {
  const last = path.at(-1);
  if (last === undefined) return "the file";
  return typeof last === "number" ? `entry ${last + 1} of ${nameOf(path.slice(0, -1))}` : `"${clip(String(last))}"`;
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    input,
  );
}

/** A value as a message shows it. */
function show(value: unknown): string {
  if (value === null) return "null";
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object") return "an object";
  if (typeof value === "number") return String(value); // JSON would call a number too large for it null
  return clip(JSON.stringify(value) ?? String(value));
}

function clip(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
