"use client";

import { useMemo } from "react";
import { OwnMark, PlainLine } from "@/app/_sheet/end-marks";
import type { DrawnPoints } from "./drawn-points";
import { usePractice, usePracticeRoom } from "./practice-context";

/** The mark being placed, with the lines it would make. It alone renders while the mark moves. */
export function PendingMark({
  asked,
  drawn,
  held,
}: {
  readonly asked: string;
  readonly drawn: DrawnPoints;
  readonly held: boolean;
}) {
  const { exercise, edges } = usePracticeRoom();
  const at = usePractice((practice) => practice.attempt.pending);
  const ends = useMemo(() => edgesAt(asked, edges, drawn), [asked, edges, drawn]);
  if (!at) return null;
  return (
    <g data-pending="">
      {ends.map(([id, other]) => (
        <PlainLine key={id} from={other} to={at} scaleRatio={exercise.scaleRatio} className="own-line" />
      ))}
      <OwnMark at={at} scaleRatio={exercise.scaleRatio} held={held} />
    </g>
  );
}

/** The edges that run from a point to points already on the sheet, with their other ends. */
function edgesAt(
  point: string,
  edges: readonly { readonly id: string; readonly from: string; readonly to: string }[],
  drawn: DrawnPoints,
): [id: string, other: readonly [number, number]][] {
  return edges.flatMap((edge): [string, readonly [number, number]][] => {
    const other = edge.from === point ? edge.to : edge.to === point ? edge.from : null;
    const at = other === null ? undefined : drawn.get(other);
    return at ? [[edge.id, at]] : [];
  });
}
