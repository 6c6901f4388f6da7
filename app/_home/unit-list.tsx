import Link from "next/link";
import { skillWords, UNIT_WORDS } from "@/app/_parts/course/course-words";
import { StillDrawing } from "@/app/_sheet/still-drawing";
import { displayBounds } from "@/lib/drawing/display-bounds";
import type { DisplayItem, Stroke } from "@/lib/drawing/display-list";
import { drawPlan } from "@/lib/drawing/draw-plan";
import { type Exercise, UNITS } from "@/lib/exercise/exercise";
import { printScale } from "@/lib/measure/scale";
import { RecordCell } from "./record-cell";

/** The units of the course, each a register of its sheets. */
export function UnitList({ exercises }: { readonly exercises: readonly Exercise[] }) {
  return UNITS.flatMap((unit) => {
    const sheets = exercises.filter((exercise) => exercise.unit === unit);
    if (sheets.length === 0) return [];
    return [
      <section key={unit} className="register ruled" aria-labelledby={`unit-${unit}`}>
        <header className="register-head">
          <h2 id={`unit-${unit}`} className="lettering">
            {UNIT_WORDS[unit].title}
          </h2>
          <p>{UNIT_WORDS[unit].trains}</p>
        </header>
        <ul className="register-rows">
          {sheets.map((exercise, i) => (
            <SheetRow key={exercise.id} exercise={exercise} number={i + 1} />
          ))}
        </ul>
      </section>,
    ];
  });
}

function SheetRow({ exercise, number }: { readonly exercise: Exercise; readonly number: number }) {
  const plan = (exercise.task.kind === "picture-to-plan" ? [] : drawPlan(exercise)).flatMap(asThumbnail);
  const box = displayBounds(plan, exercise.scaleRatio);
  return (
    <li className="register-row">
      <span className="register-number lettering">{number}</span>
      <span className="register-plan" aria-hidden="true">
        {box && (
          <StillDrawing
            list={plan}
            bounds={{ left: box[0], bottom: box[1], right: box[2], top: box[3] }}
            scaleRatio={exercise.scaleRatio}
            pxPerMm={0.6}
            label=""
          />
        )}
      </span>
      <span className="register-title">
        <Link href={`/practise/${exercise.id}`} prefetch={false}>
          {exercise.title}
        </Link>
        <span className="register-skills">{exercise.skills.map(skillWords).join(", ")}</span>
        <span className="register-ways">
          <OtherWay to="demonstrate" words="Demonstrate" exercise={exercise} />
          <OtherWay to="sheet" words="Print" exercise={exercise} />
        </span>
      </span>
      <span className="register-fact">Level {exercise.level}</span>
      <span className="register-fact">{exercise.task.marks.length} marks</span>
      <span className="register-fact register-scale">{printScale(exercise.scale)}</span>
      <RecordCell id={exercise.id} version={exercise.version} />
    </li>
  );
}

/** What else can be done with a sheet than practise it, over the row's own link. */
function OtherWay({
  to,
  words,
  exercise: { id, title },
}: {
  readonly to: "demonstrate" | "sheet";
  readonly words: string;
  readonly exercise: Pick<Exercise, "id" | "title">;
}) {
  return (
    <Link href={`/${to}/${id}`} prefetch={false} className="register-way plain-link">
      {words}
      <span className="aloud">: {title}</span>
    </Link>
  );
}

/** A thumbnail keeps the heavier lines, ruled: fine ones cannot be told apart there, and a hand's wobble only weighs. */
function asThumbnail(item: DisplayItem): Stroke[] {
  const kept = item.kind === "stroke" && (item.weight !== "thin" || item.line === "centre" || item.closed);
  return kept ? [{ ...item, hand: false }] : [];
}
