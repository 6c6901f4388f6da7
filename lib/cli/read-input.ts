import { createReadStream, readFileSync, statSync } from "node:fs";
import { resolve } from "node:path";
import { createInterface } from "node:readline";
import { checkSense } from "../exercise/check-sense";
import type { Exercise } from "../exercise/exercise";
import type { Problem } from "../exercise/problem";
import { readExercise } from "../exercise/read-exercise";
import { MAX_FILE_BYTES } from "../exercise/read-json";
import type { CallError } from "./outcome";

export type Input<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly errors: readonly CallError[] };

/** npm changes the working directory; paths mean what they meant where the command was typed. */
export function resolvePath(file: string): string {
  return resolve(process.env.INIT_CWD ?? process.cwd(), file);
}

/** Why a path cannot be read as a file of at most `most` bytes, or null. */
function whyUnreadable(file: string, most: number): CallError | null {
  const refuse = (message: string, hint: string): CallError => ({ file, where: "", message, hint });
  try {
    const stats = statSync(resolvePath(file));
    if (stats.isDirectory()) return refuse("this is a folder", "name a file in it");
    if (stats.size > most) return refuse("the file is larger than 1 MiB", "split it");
    return null;
  } catch (error) {
    return refuse(`the file cannot be read: ${reason(error)}`, "check its name and place");
  }
}

function reason(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (code === "ENOENT") return "there is no such file";
  if (code === "EACCES" || code === "EPERM") return "it may not be opened";
  return code === "" ? "something went wrong" : code;
}

export function readText(file: string): Input<string> {
  const wrong = whyUnreadable(file, MAX_FILE_BYTES);
  if (wrong) return { ok: false, errors: [wrong] };
  try {
    return { ok: true, value: readFileSync(resolvePath(file), "utf8") };
  } catch (error) {
    return {
      ok: false,
      errors: [
        { file, where: "", message: `the file cannot be read: ${reason(error)}`, hint: "check its name and place" },
      ],
    };
  }
}

/** An exercise of the right form; its sense is not checked. */
export function readExerciseFile(file: string): Input<Exercise> {
  const text = readText(file);
  if (!text.ok) return text;
  const reading = readExercise(text.value);
  return reading.ok ? { ok: true, value: reading.exercise } : { ok: false, errors: [firstOf(file, reading.problems)] };
}

/** An exercise that makes sense too. */
export function readSoundExercise(file: string): Input<Exercise> {
  const exercise = readExerciseFile(file);
  if (!exercise.ok) return exercise;
  const faults = checkSense(exercise.value).filter(({ weight }) => weight === "fault");
  return faults.length === 0 ? exercise : { ok: false, errors: [firstOf(file, faults)] };
}

/** One error for a file however much is wrong with it; `validate` lists the rest. */
export function firstOf(file: string, problems: readonly Problem[], line: number | null = null): CallError {
  const [first, ...rest] = problems;
  if (!first) throw new Error("An error needs at least one problem.");
  const more = rest.length === 0 ? "" : ` (validate lists ${rest.length} more)`;
  return { file, where: first.where, message: onLine(line, first.message), hint: `${first.hint}${more}` };
}

export type Piece = { readonly file: string; readonly line: number | null; readonly text: Input<string> };

export function isLines(file: string): boolean {
  return file.toLowerCase().endsWith(".jsonl");
}

/** The documents of a file: itself, or each line of a `.jsonl` that is not blank, read line by line. */
export async function* readPieces(file: string): AsyncGenerator<Piece> {
  if (!isLines(file)) {
    yield { file, line: null, text: readText(file) };
    return;
  }
  const wrong = whyUnreadable(file, Number.POSITIVE_INFINITY);
  if (wrong) {
    yield { file, line: null, text: { ok: false, errors: [wrong] } };
    return;
  }
  let line = 0;
  for await (const text of createInterface({
    input: createReadStream(resolvePath(file)),
    crlfDelay: Number.POSITIVE_INFINITY,
  })) {
    line += 1;
    if (text.trim() !== "") yield { file, line, text: { ok: true, value: text } };
  }
}

/** Says the line of a `.jsonl` before a message. */
export function onLine(line: number | null, message: string): string {
  return line === null ? message : `line ${line}: ${message}`;
}
