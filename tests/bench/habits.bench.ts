import { bench, describe } from "vitest";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { drawMarks, startDice } from "../habits/student";
import { type Confusion, longExercises, mean, sharesRight, tryStudents } from "../habits/trials";

/** Hands, as shares of the opening's width: 1.5, 3 and 4 mm on a sheet 20 inches wide. */
const HANDS = [0.003, 0.006, 0.008];

/** Students of each kind in each exercise. BENCH_STUDENTS asks for more or fewer. */
const each = Number(process.env.BENCH_STUDENTS ?? 20);
const SIZES = { none: 2 * each, one: each, two: Math.ceil(each / 20) };

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

/** A row a habit: how often it was named right, and what was said instead. */
function table(confusion: Confusion): readonly string[] {
  const shares = sharesRight(confusion);
  return [...confusion]
    .sort(([a], [b]) => (shares.get(a) ?? 0) - (shares.get(b) ?? 0))
    .map(([id, row]) => {
      const others = [...row].filter(([answer]) => answer !== id).sort(([, a], [, b]) => b - a);
      const students = [...row.values()].reduce((sum, n) => sum + n, 0);
      const instead = others.map(([answer, n]) => `${answer} ${n}`).join(", ");
      return `  ${id.padEnd(26)}${percent(shares.get(id) ?? 0).padStart(8)} of ${String(students).padStart(5)}   ${instead}`;
    });
}

const shown = await longExercises();
console.log(`Habits over ${shown.length} exercises of six marks or more, ${each} students a habit in each:`);
for (const hand of HANDS) {
  const { confusion, none, two } = tryStudents(shown, hand, SIZES, startDice(1435));
  const shares = [...sharesRight(confusion).values()];
  const accusations = none.claims.length > 0 ? ` (${none.claims.join(", ")})` : "";
  console.log(
    [
      `A hand of ${percent(hand)} of the opening's width`,
      `  named right: ${percent(mean(shares))} on average, ${percent(Math.min(...shares))} of the worst`,
      `  said to have a habit without one: ${none.accused} of ${none.students}${accusations}`,
      `  both of two habits named: ${percent(two.bothNamed / two.students)} of ${two.students}`,
      "  habit                    named right, and what was said instead",
      ...table(confusion),
    ].join("\n"),
  );
}

const sheets = shown.map(({ exercise, ways }) => {
  const way = ways[0];
  const marks = drawMarks(exercise, way ? [way] : [], 0.006 * exercise.stage.opening.width, startDice(7));
  return { exercise, marks };
});
const marksInAll = sheets.reduce((sum, { marks }) => sum + marks.marks.length, 0);

describe(`grading with habits: ${marksInAll} marks of ${sheets.length} sheets a run`, () => {
  bench("gradeMarks", () => {
    for (const { exercise, marks } of sheets) gradeMarks(exercise, marks);
  });
});

/** Marks a second over each of some rounds of all the sheets, the first of them cold; the table gives their mean, this their median. */
const rounds = Array.from({ length: 21 }, () => {
  const start = performance.now();
  for (const { exercise, marks } of sheets) gradeMarks(exercise, marks);
  return marksInAll / ((performance.now() - start) / 1_000);
}).sort((a, b) => a - b);
console.log(
  `Graded with habits: ${Math.round(rounds[10] as number)} marks a second, the median of ${rounds.length} rounds.`,
);
