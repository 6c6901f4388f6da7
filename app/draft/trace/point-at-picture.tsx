"use client";

import { useMemo, useState } from "react";
import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import type { WorkerDesk } from "@/app/_photo/worker-desk";
import { PLACES, type Pointing, pointedPair } from "@/lib/draft/bring/pointing/pointing";
import { sayTrace } from "@/lib/draft/bring/trace/say-trace";
import { pixelsToPlan, traceFrame } from "@/lib/draft/bring/trace/trace-frame";
import { typedLength } from "@/lib/draft/snapping/typed-point";
import type { LengthUnits } from "@/lib/measure/length";
import { layBoard, toSheet } from "../bring/board";
import { BringSheet } from "../bring/bring-sheet";
import { PointingSteps } from "../bring/pointing-steps";
import { createPointing, type PointingStore } from "../bring/pointing-store";
import { PointingSurface } from "../bring/pointing-surface";
import { useExercise } from "../desk/draft-context";
import { linesOfTracing, type OpenedPicture, type Trouble } from "./open-tracing";
import { type Trace, USUAL_STRENGTH } from "./trace";
import { useTraceStore } from "./trace-context";
import { useAddress } from "./under-plan";

type Props = {
  readonly picture: OpenedPicture;
  readonly worker: WorkerDesk;
  readonly onStraighten: () => void;
};

/** The photograph, to be pointed at, and what follows from that. */
export function PointAtPicture({ picture, worker, onStraighten }: Props) {
  const { width, height, from } = picture;
  const { units, stage } = useExercise();
  const board = useMemo(() => layBoard({ least: [0, 0], most: [width, height] }), [width, height]);
  const [pointing] = useState(() => pointedAs(from));
  const address = useAddress(picture.picture);
  const [left, top] = toSheet(board, [0, height]);
  const [right, bottom] = toSheet(board, [width, 0]);
  return (
    <BringSheet board={board}>
      <div className="draft-sheet bring-sheet trace-sheet ruled">
        <PointingSurface
          pointing={pointing}
          board={board}
          catching={null}
          label="The photograph of the plan"
          whenAll="All six places are set. Write how long the known length is, and see what follows."
        >
          {address && (
            <image
              href={address}
              x={left}
              y={top}
              width={right - left}
              height={bottom - top}
              preserveAspectRatio="none"
              className="trace-photo"
            />
          )}
        </PointingSurface>
        <div className="draft-content bring-side">
          <PointingSteps pointing={pointing} units={units} />
          <WhatFollows picture={picture} worker={worker} pointing={pointing} units={units} depth={stage.depth} />
          <div className="draft-presses">
            <Press weight="small" onClick={onStraighten}>
              It was taken at a slant: straighten it first
            </Press>
          </div>
        </div>
      </div>
    </BringSheet>
  );
}

type Following = Omit<Props, "onStraighten"> & {
  readonly pointing: PointingStore;
  readonly units: LengthUnits;
  readonly depth: number;
};

/** How far the lines are out of square, what a pixel is, and the press that lays it under. */
function WhatFollows({ picture, worker, pointing, units, depth }: Following) {
  const now = useStore(pointing);
  const store = useTraceStore();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const frame = useMemo(() => frameOf(now, units), [now, units]);
  const lay = async () => {
    if (!frame?.ok || busy) return;
    setBusy(true);
    const { picture: blob, width, height, from } = picture;
    const found = from ? ({ kind: "lines", lines: from.lines } as const) : await linesOfTracing(worker, blob);
    setBusy(false);
    if (found.kind === "refused") return setTrouble(found);
    const { places, written } = now;
    const toPlan = pixelsToPlan(frame.toPlan, height);
    const strength = from?.strength ?? USUAL_STRENGTH;
    const { lines } = found;
    store.getState().lay({ picture: blob, lines, width, height, toPlan, places, written, strength, shown: true });
  };
  return (
    <section aria-label="What follows" className="trace-follows">
      <div role="status">
        {frame?.ok && sayTrace(frame, units, depth).map((words) => <p key={words}>{words}</p>)}
        {frame && !frame.ok && <p className="draft-wrong">{frame.say}</p>}
        {busy && <p>Finding its lines.</p>}
      </div>
      {trouble && (
        <p className="draft-wrong" role="alert">
          {trouble.say} {trouble.remedy}
        </p>
      )}
      <div className="draft-presses">
        <Press weight="main" aria-disabled={!frame?.ok || busy} onClick={lay}>
          {frame?.ok ? "Lay it under the plan" : "Point at everything first"}
        </Press>
      </div>
    </section>
  );
}

/** The frame that follows from what was pointed at; null while something is missing. */
function frameOf(now: Pointing, units: LengthUnits) {
  const [centreLine, plasterLine, size] = [
    pointedPair(now, "centre line"),
    pointedPair(now, "plaster line"),
    pointedPair(now, "size"),
  ];
  const length = typedLength(now.written, units);
  if (!centreLine || !plasterLine || !size || !length.ok) return null;
  return traceFrame({ centreLine, plasterLine, size, length: length.metres });
}

/** Nothing pointed at yet, or what was when the photograph was laid. */
function pointedAs(from: Trace | null): PointingStore {
  const pointing = createPointing(true);
  const { tell } = pointing.getState();
  for (const place of PLACES) {
    const to = from?.places[place];
    if (to) tell({ do: "move", place, to });
  }
  if (from) tell({ do: "write", text: from.written });
  return pointing;
}
