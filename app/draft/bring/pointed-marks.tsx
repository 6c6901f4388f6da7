"use client";

import { useStore } from "zustand";
import { runOn } from "@/app/_sheet/catch-points";
import { AtPoint, PlainLine } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import { PLACES, POINTED_PAIRS, type PointedPair, type Pointing } from "@/lib/draft/bring/pointing/pointing";
import { type Board, toBoard } from "./board";
import type { PointingStore } from "./pointing-store";

/** What stands at each place, so that they are told apart without colour. */
const LETTERS: Readonly<Record<(typeof PLACES)[number], string>> = {
  "centre line downstage": "C",
  "centre line upstage": "C",
  "plaster line": "P",
  "plaster line again": "P",
  "size from": "L",
  "size to": "L",
};

/** The places that are set, and the lines through them: the centre line and the plaster line run on, the known length does not. */
export function PointedMarks({ pointing, board }: { readonly pointing: PointingStore; readonly board: Board }) {
  const { scaleRatio } = useSheet();
  const now = useStore(pointing);
  const shown = withHeld(now);
  return (
    <>
      {(Object.keys(POINTED_PAIRS) as PointedPair[]).map((pair) => {
        const [one, other] = POINTED_PAIRS[pair].map((name) => shown[name]);
        if (!one || !other || (pair === "size" && !now.asksSize)) return null;
        const [from, to] = [toBoard(board, one), toBoard(board, other)];
        const [a, b] = (pair !== "size" && runOn(from, to, board.bounds)) || [from, to];
        return <PlainLine key={pair} from={a} to={b} scaleRatio={scaleRatio} className={`bring-line ${LINES[pair]}`} />;
      })}
      {PLACES.map((name) => {
        const at = now.places[name];
        if (!at || (name.startsWith("size") && !now.asksSize)) return null;
        return (
          <AtPoint key={name} at={toBoard(board, at)} scaleRatio={scaleRatio}>
            <path d="M0 -8L8 0L0 8L-8 0Z" className="bring-place-halo" />
            <path d="M0 -8L8 0L0 8L-8 0Z" className="bring-place" />
            <circle r={1.4} className="bring-place-point" />
            <text x={10} y={-7} className="letters mark-letters p-blue">
              {LETTERS[name]}
            </text>
          </AtPoint>
        );
      })}
    </>
  );
}

const LINES: Readonly<Record<PointedPair, string>> = {
  "centre line": "l-centre",
  "plaster line": "l-plaster",
  size: "",
};

/** The places, with the one asked for where the pointer is held. */
function withHeld({ places, asked, held }: Pointing): Pointing["places"] {
  return asked && held ? { ...places, [asked]: held.at } : places;
}
