import type { Problem } from "../exercise/problem";

/** What was wrong with the input or the call; `file` is null when no file is to blame. */
export type CallError = Problem & { readonly file: string | null };

/** What one call prints and how it ends: 0 done, 1 understood but does not pass, 2 the input or the call was wrong. */
export type Outcome = { readonly exitCode: 0 | 1 | 2; readonly out: string; readonly errors: readonly CallError[] };

export function done(out: string): Outcome {
  return { exitCode: 0, out, errors: [] };
}

export function refused(...errors: readonly CallError[]): Outcome {
  return { exitCode: 2, out: "", errors };
}

/**
 * What goes to standard error: one JSON document, with the first error and how many more there are; in words, every error.
 * Empty when there are none.
 */
export function printErrors(errors: readonly CallError[], inWords: boolean): string {
  const [first, ...rest] = errors;
  if (!first) return "";
  if (inWords) return errors.map((error) => `${inPlainWords(error)}\n`).join("");
  const more = rest.length === 0 ? "" : ` (${rest.length} more: --text lists them)`;
  return `${JSON.stringify({ error: { ...first, hint: `${first.hint}${more}` } })}\n`;
}

function inPlainWords({ file, where, message, hint }: CallError): string {
  const place = [file, where].filter((part) => part !== null && part !== "").join(" at ");
  return `${place === "" ? "" : `${place}: `}${message}. ${hint}.`;
}

export function wrongCall(message: string, hint: string): Outcome {
  return refused({ file: null, where: "", message, hint });
}
