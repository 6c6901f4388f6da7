import { closeSync, openSync, readSync, statSync } from "node:fs";
import { resolve } from "node:path";
import { checkSense } from "../exercise/check-sense";
import type { Exercise } from "../exercise/exercise";
import type { Problem } from "../exercise/problem";
import { readExercise } from "../exercise/read-exercise";
import { MAX_FILE_BYTES } from "../exercise/read-json";
import type { CallError } from "./outcome";
import { readLines } from "./read-lines";

export type Input<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly errors: readonly CallError[] };

/** npm changes the working directory; paths mean what they meant where the command was typed. */
export function resolvePath(file: string): string {
  return resolve(process.env.INIT_CWD ?? process.cwd(), file);
}

function isFolder(file: string): boolean {
  return statSync(resolvePath(file), { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function folderInstead<Value>(file: string): Input<Value> {
  return { ok: false, errors: [{ file, where: "", message: "this is a folder", hint: "name a file in it" }] };
}

function unreadable<Value>(file: string, error: unknown): Input<Value> {
  const message = `the file cannot be read: ${reason(error)}`;
  return { ok: false, errors: [{ file, where: "", message, hint: "check its name and place" }] };
}

function reason(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (code === "ENOENT") return "there is no such file";
  if (code === "EACCES" || code === "EPERM") return "it may not be opened";
  return code === "" ? "something went wrong" : code;
}

/** The text of a file, or of one too large no more than shows that it is: then `readJson` refuses it. */
function readText(file: string): Input<string> {
  try {
    return isFolder(file) ? folderInstead(file) : { ok: true, value: readStart(resolvePath(file), MAX_FILE_BYTES + 1) };
  } catch (error) {
    return unreadable(file, error);
  }
}

function readStart(path: string, most: number): string {
  const opened = openSync(path, "r");
  try {
    const bytes = Buffer.alloc(most);
    let size = 0;
    for (let read = 1; read > 0 && size < most; size += read) read = readSync(opened, bytes, size, most - size, null);
    return bytes.toString("utf8", 0, size);
  } finally {
    closeSync(opened);
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
  let line = 0;
  try {
    if (isFolder(file)) yield { file, line: null, text: folderInstead(file) };
    else
      for await (const text of readLines(resolvePath(file), MAX_FILE_BYTES)) {
        line += 1;
        if (text.trim() !== "") yield { file, line, text: { ok: true, value: text } };
      }
  } catch (error) {
    yield { file, line: null, text: unreadable(file, error) };
  }
}

/** Says the line of a `.jsonl` before a message. */
export function onLine(line: number | null, message: string): string {
  return line === null ? message : `line ${line}: ${message}`;
}
