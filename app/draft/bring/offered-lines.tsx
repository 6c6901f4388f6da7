"use client";

import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { PlainLine } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { FoundLine, FoundLines } from "@/lib/draft/bring/place/find-lines";
import { pointedPair } from "@/lib/draft/bring/pointing/pointing";
import { type Board, toBoard } from "./board";
import type { PointingStore } from "./pointing-store";

type Pair = "centre line" | "plaster line";
type Props = { readonly pointing: PointingStore; readonly found: FoundLines };

/** The lines found that are not pointed at yet. */
function useOffers({ pointing, found }: Props): readonly (readonly [Pair, FoundLine])[] {
  const now = useStore(pointing);
  const offers: readonly (readonly [Pair, FoundLine | null])[] = [
    ["centre line", found.centreLine],
    ["plaster line", found.plasterLine],
  ];
  return offers.flatMap(([pair, line]) => (line && !pointedPair(now, pair) ? [[pair, line] as const] : []));
}

/** Lines that may be meant, to be taken instead of pointing at them. */
export function OfferedLines(props: Props) {
  const offers = useOffers(props);
  const { tell } = props.pointing.getState();
  if (offers.length === 0) return null;
  return (
    <section aria-label="Lines that may be meant" className="bring-offers">
      {offers.map(([pair, { why }]) => (
        <p key={pair}>
          The {pair} may be {why}.
        </p>
      ))}
      <div className="draft-presses">
        {offers.map(([pair, { line }]) => (
          <Press key={pair} weight="small" onClick={() => tell({ do: "take line", pair, line })}>
            Take it as the {pair}
          </Press>
        ))}
      </div>
      <p className="draft-note">Or point at others yourself. What is taken can be set again.</p>
    </section>
  );
}

/** The same lines in the drawing, broken and faint. */
export function OfferedMarks({ board, ...props }: Props & { readonly board: Board }) {
  const { scaleRatio } = useSheet();
  return useOffers(props).map(([pair, { line }]) => (
    <PlainLine
      key={pair}
      from={toBoard(board, line[0])}
      to={toBoard(board, line[1])}
      scaleRatio={scaleRatio}
      className="bring-offered"
    />
  ));
}
