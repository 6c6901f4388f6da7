import { checkSense } from "../exercise/check-sense";
import { type Finding, fault } from "../exercise/finding";
import { readExerciseJson } from "../exercise/read-exercise";
import { readJson } from "../exercise/read-json";
import { readMarksJson } from "../exercise/read-marks";
import { type CallError, type Outcome, wrongCall } from "./outcome";
import { isLines, onLine, readPieces } from "./read-input";

type FileReport = { readonly file: string; readonly ok: boolean; readonly findings: readonly Finding[] };

/** `validate FILE...`: form and sense of exercise and marks files. */
export async function validate(files: readonly string[], text: boolean): Promise<Outcome> {
  if (files.length === 0) return wrongCall("validate needs at least one file", "validate FILE...");
  const reports: FileReport[] = [];
  const errors: CallError[] = [];
  for (const file of files) {
    const findings: Finding[] = [];
    for await (const piece of readPieces(file)) {
      if (piece.text.ok)
        findings.push(
          ...checkText(piece.text.value).map((finding) => ({
            ...finding,
            message: onLine(piece.line, finding.message),
          })),
        );
      else errors.push(...piece.text.errors);
    }
    reports.push({ file, ok: findings.every(({ weight }) => weight !== "fault"), findings });
  }
  if (errors.length > 0) return { exitCode: 2, out: "", errors };
  const passes = reports.every(({ ok }) => ok);
  const out = text ? reports.map(reportInWords).join("\n") : JSON.stringify({ files: reports }, null, 2);
  return { exitCode: passes ? 0 : 1, out, errors: [] };
}

function checkText(text: string): readonly Finding[] {
  const json = readJson(text);
  if (!json.ok) return [asFault(json.problem)];
  if (isMarks(json.value)) {
    const marks = readMarksJson(json.value);
    return marks.ok ? [] : marks.problems.map(asFault);
  }
  const exercise = readExerciseJson(json.value);
  return exercise.ok ? checkSense(exercise.exercise) : exercise.problems.map(asFault);
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
