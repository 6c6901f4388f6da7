import { expect } from "vitest";
import { printErrors } from "@/lib/cli/outcome";
import { runCommand } from "@/lib/cli/run-command";
import { type Change, writeTideOffice } from "../fixtures/tide-office";
import { temporaryFiles } from "./temporary-files";

export const FOOT_M = 0.3048;

/** One mark for the tide office: the contract's own example. */
export const MARKS = {
  format: "plasterline.marks/1",
  exercise: "tide-office",
  marks: [{ point: "B.foot", at: [-1.652, 0.551] }],
};

/** Files for one test file, and ways to write the tide office and marks for it. */
export function commandFiles() {
  const files = temporaryFiles();
  return {
    ...files,
    exercise: (...changes: readonly Change[]): string =>
      files.write("exercise.json", JSON.stringify(writeTideOffice(...changes), null, 2)),
    marks: (name: string, more: object = {}): string => files.write(name, JSON.stringify({ ...MARKS, ...more })),
  };
}

/** The one JSON document on standard output of a call that ends as it should. */
export async function printed(exitCode: number, ...words: string[]) {
  const outcome = await runCommand(words);
  expect(outcome).toMatchObject({ exitCode, errors: [] });
  return JSON.parse(outcome.out);
}

/** The error of a call that was wrong. */
export async function refusal(...words: string[]) {
  const { exitCode, out, errors } = await runCommand(words);
  expect({ exitCode, out }).toEqual({ exitCode: 2, out: "" });
  const { error } = JSON.parse(printErrors(errors, false));
  expect(Object.keys(error).sort()).toEqual(["file", "hint", "message", "where"]);
  return error;
}
