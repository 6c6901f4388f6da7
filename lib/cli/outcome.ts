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

export function wrongCall(message: string, hint: string): Outcome {
  return refused({ file: null, where: "", message, hint });
}
