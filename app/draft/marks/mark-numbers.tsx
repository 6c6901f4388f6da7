"use client";

import { useMemo } from "react";
import { AtPoint } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import { type MarkPlace, type MarkPlane, markPlaces } from "@/lib/draft/exercise-desk/mark-places";
import { useDesk, useExercise } from "../desk/draft-context";
import "./marks.css";

/** While the exercise is made: every point that can be asked, with its numbers in the order; what is given is a full square. */
export function MarkNumbers({ plane }: { readonly plane: MarkPlane }) {
  const open = useDesk(({ drawer, hand, trying }) => drawer === "exercise" && hand.kind === "choose" && !trying);
  return open ? <Numbers plane={plane} /> : null;
}

function Numbers({ plane }: { readonly plane: MarkPlane }) {
  const { scaleRatio } = useSheet();
  const exercise = useExercise();
  const spot = useDesk((desk) => desk.spot);
  const places = useMemo(() => markPlaces(exercise, plane), [exercise, plane]);
  // What is asked lies over what is not.
  const sorted = useMemo(() => places.toSorted((a, b) => RANK[a.use] - RANK[b.use]), [places]);
  return sorted.map((place) => (
    <AtPoint key={place.names[0]} at={place.at} scaleRatio={scaleRatio}>
      {spot?.plane === plane && place.names.includes(spot.name) && <circle r={13} className="mark-spot" />}
      <Sign place={place} />
    </AtPoint>
  ));
}

const RANK = { free: 0, given: 1, asked: 2 } as const;

function Sign({ place: { use, numbers, names } }: { readonly place: MarkPlace }) {
  if (use === "given") return <path d="M-4.5 -4.5H4.5V4.5H-4.5Z" className="mark-given" data-given={names[0]} />;
  if (use === "free") return <circle r={2.5} className="mark-free" data-free={names[0]} />;
  return (
    <>
      <circle r={3.5} className="mark-asked" />
      <text x={7} y={-6} className="mark-number" data-number={names[0]}>
        {sayNumbers(numbers)}
      </text>
    </>
  );
}

/** "3", "3, 4", "3 to 6". */
export function sayNumbers(numbers: readonly number[]): string {
  const sorted = numbers.toSorted((a, b) => a - b);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined) return "";
  const run = sorted.length > 2 && last - first === sorted.length - 1;
  return run ? `${first} to ${last}` : sorted.join(", ");
}
