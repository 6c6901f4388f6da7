import { checkSense } from "../exercise/check-sense";
import { type Finding, fault } from "../exercise/finding";
import { readExerciseJson } from "../exercise/read-exercise";
import { readJson } from "../exercise/read-json";
import { readMarksJson } from "../exercise/read-marks";
import { revealedHabits } from "../habits/reveal";
import { type CallError, type Outcome, wrongCall } from "./outcome";
import { isLines, onLine, readPieces } from "./read-input";

type FileReport = { readonly file: string; readonly ok: boolean; readonly findings: readonly Finding[] };

/** What the checks say of one document, and of a sound exercise the habits its marks can reveal. */
type Checked = { readonly findings: readonly Finding[]; readonly reveals: readonly string[] | null };

/** `validate FILE...`: form and sense of exercise and marks files. */
export async function validate(files: readonly string[], text: boolean): Promise<Outcome> {
  if (files.length === 0) return wrongCall("validate needs at least one file", "validate FILE...");
  const reports: FileReport[] = [];
  const words: string[] = [];
  const errors: CallError[] = [];
  for (const file of files) {
    const findings: Finding[] = [];
    const reveals: string[] = [];
    for await (const piece of readPieces(file)) {
      if (piece.text.ok) {
        const checked = checkText(piece.text.value, text);
        findings.push(
          ...checked.findings.map((finding) => ({ ...finding, message: onLine(piece.line, finding.message) })),
        );
        if (checked.reveals) reveals.push(sayReveals(checked.reveals));
      } else errors.push(...piece.text.errors);
    }
    const report = { file, ok: findings.every(({ weight }) => weight !== "fault"), findings };
    reports.push(report);
    words.push(reportInWords(report), ...reveals);
  }
  if (errors.length > 0) return { exitCode: 2, out: "", errors };
  const passes = reports.every(({ ok }) => ok);
  const out = text ? words.join("\n") : JSON.stringify({ files: reports }, null, 2);
  return { exitCode: passes ? 0 : 1, out, errors: [] };
}

function checkText(text: string, inWords: boolean): Checked {
  const json = readJson(text);
  if (!json.ok) return { findings: [asFault(json.problem)], reveals: null };
  if (isMarks(json.value)) {
    const marks = readMarksJson(json.value);
    return { findings: marks.ok ? [] : marks.problems.map(asFault), reveals: null };
  }
  const exercise = readExerciseJson(json.value);
  if (!exercise.ok) return { findings: exercise.problems.map(asFault), reveals: null };
  const findings = checkSense(exercise.exercise);
  const sound = findings.every(({ weight }) => weight !== "fault");
  return { findings, reveals: inWords && sound ? revealedHabits(exercise.exercise) : null };
}

function sayReveals(habits: readonly string[]): string {
  return habits.length === 0 ? "  can reveal no habit: ask for more marks" : `  can reveal: ${habits.join(", ")}`;
}

function asFault({ where, message, hint }: { where: string; message: string; hint: string }): Finding {
  return fault(where, message, hint);
}

function isMarks(value: unknown): boolean {
  const format = typeof value === "object" && value !== null && "format" in value ? value.format : null;
  return typeof format === "string" && format.startsWith("plasterline.marks");
}

function reportInWords({ file, ok, findings }: FileReport): string {
  const kind = isLines(file) ? "every line is" : "it is";
  const head = ok ? `${file}: passes${findings.length === 0 ? `, ${kind} sound` : ""}` : `${file}: does not pass`;
  return [head, ...findings.map((f) => `  ${f.weight} at ${f.where || "the file"}: ${f.message}. ${f.hint}.`)].join(
    "\n",
  );
}
