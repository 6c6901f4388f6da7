"use client";

import { useLayoutEffect, useMemo, useRef } from "react";
import type { DrawnPoints } from "@/app/_sheet/drawn-points";
import { OwnMark, PlainLine, pixelsAt } from "@/app/_sheet/end-marks";
import { toPaper } from "@/app/_sheet/view";
import { usePractice, usePracticeRoom } from "./practice-context";

/**
 * The mark being placed, with the lines it would make. While it moves nothing renders: its group and its lines' ends are
 * moved where they stand.
 */
export function PendingMark({
  asked,
  drawn,
  held,
}: {
  readonly asked: string;
  readonly drawn: DrawnPoints;
  readonly held: boolean;
}) {
  const { exercise, edges, store } = usePracticeRoom();
  const { scaleRatio } = exercise;
  const placed = usePractice((practice) => practice.attempt.pending !== null);
  const group = useRef<SVGGElement>(null);
  const ends = useMemo(() => edgesAt(asked, edges, drawn), [asked, edges, drawn]);
  useLayoutEffect(
    () =>
      store.subscribe(({ attempt: { pending } }, before) => {
        if (pending === null || pending === before.attempt.pending || !group.current) return;
        const [x, y] = toPaper(pending, scaleRatio);
        for (const part of group.current.children) {
          if (part.tagName === "line") {
            part.setAttribute("x2", String(x));
            part.setAttribute("y2", String(y));
          } else (part as SVGGElement).style.transform = pixelsAt(pending, scaleRatio);
        }
      }),
    [store, scaleRatio],
  );
  const at = placed ? store.getState().attempt.pending : null;
  if (!at) return null;
  return (
    <g data-pending="" ref={group}>
      {ends.map(([id, other]) => (
        <PlainLine key={id} from={other} to={at} scaleRatio={scaleRatio} className="own-line" />
      ))}
      <OwnMark at={at} scaleRatio={scaleRatio} held={held} />
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
