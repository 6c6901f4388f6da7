"use client";

import { AtPoint, OwnMark, PlainLine, TrueMark } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { Plane } from "@/app/_sheet/view";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { useDemonstration, useRoom, useStep } from "./demonstration-context";
import type { Place } from "./demonstration-store";

/** The guesses called out, each with its letters; and the true point beside them once it is shown. */
export function Guesses({ plane }: { readonly plane: Plane }) {
  const { scaleRatio } = useSheet();
  const room = useRoom();
  const step = useStep();
  const guesses = useDemonstration((demonstration) => demonstration.guesses);
  const trying = useDemonstration((demonstration) => demonstration.trying);
  const aim = useDemonstration((demonstration) => demonstration.aim);
  if (trying === "no" || plane !== room.plane) return null;
  const truth = trying === "shown" ? trueOn(room, step.point) : null;
  return (
    <g data-trying={trying}>
      {truth &&
        guesses.map(({ label, at }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: guesses are in the order called out and only the last is taken back
          <PlainLine key={`${label}.${i}`} from={at} to={truth} scaleRatio={scaleRatio} className="off-line" />
        ))}
      {guesses.map(({ label, at }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: guesses are in the order called out and only the last is taken back
        <g key={`${label}.${i}`} data-guess={label}>
          <OwnMark at={at} scaleRatio={scaleRatio} />
          <AtPoint at={at} scaleRatio={scaleRatio}>
            <text className="letters guess-letters" x={11} y={-9}>
              {label}
            </text>
          </AtPoint>
        </g>
      ))}
      {aim && (
        <g data-aim="">
          <OwnMark at={aim} scaleRatio={scaleRatio} held />
        </g>
      )}
      {truth && (
        <g data-true="">
          <TrueMark at={truth} scaleRatio={scaleRatio} />
        </g>
      )}
    </g>
  );
}

/** Where a named point truly lies on the drawing that it is found on. */
function trueOn(
  { exercise, plane }: Pick<ReturnType<typeof useRoom>, "exercise" | "plane">,
  name: string | null,
): Place | null {
  const point = name === null ? undefined : exercisePoints(exercise).get(name);
  if (!point) return null;
  return plane === "plan" ? [point.at[0], point.at[1]] : point.picture;
}
