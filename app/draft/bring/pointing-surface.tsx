"use client";

import { type ReactNode, useCallback, useMemo } from "react";
import { useStore } from "zustand";
import { CaughtMark, OwnMark } from "@/app/_sheet/end-marks";
import { Magnifier } from "@/app/_sheet/magnifier";
import { Pane } from "@/app/_sheet/pane";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { Catching } from "@/lib/draft/bring/pointing/catch-place";
import { sayAsked, sayCaughtBy } from "@/lib/draft/bring/pointing/say-pointing";
import { type Board, sayShare, toBoard } from "./board";
import { PointedMarks } from "./pointed-marks";
import type { PointingStore } from "./pointing-store";
import { usePointing } from "./use-pointing";
import { ZoomRow } from "./zoom-row";

const DRAWING_ID = "brought-drawing";

type Props = {
  readonly pointing: PointingStore;
  /** Where what is shown lies: `layBoard` of its bounds. */
  readonly board: Board;
  /** What is pointed at, placed by `toSheet(board, at)`; made once, since pointing renders it not again. */
  readonly children: ReactNode;
  /** What changes with what is pointed at, placed alike. */
  readonly live?: ReactNode;
  /** Lines that catch what points (`openCatching`); null for a picture, which has none. */
  readonly catching: Catching | null;
  /** What it is, for readers of the screen. */
  readonly label: string;
  /** Said under it once everything is pointed at; left out, that a place can be dragged or set again. */
  readonly whenAll?: string;
};

/**
 * A drawing, or a picture of one, on which places are pointed at one after another: two on the centre line, two on the plaster
 * line, and two with a length between them where the size is not known. Mouse, pen, finger (with a magnifier) and keys alike. What
 * to point at now stands under it.
 *
 * How another page uses it:
 *
 *     const [pointing] = useState(() => createPointing(true));          // true: the size is asked for as well
 *     const board = useMemo(() => layBoard({ least: [0, 0], most: [width, height] }), [width, height]);
 *     <BringSheet board={board}>
 *       <PointingSurface pointing={pointing} board={board} catching={null} label="The photograph">
 *         <image href={address} x={x} y={y} width={across} height={down} />
 *       </PointingSurface>
 *       <PointingSteps pointing={pointing} units="ft-in" />
 *     </BringSheet>
 *
 * All places are in what is shown's own coordinates, y up: of a picture take [px, height - py]. `toSheet` puts them into the
 * group that the children are drawn in, y down; the picture above has its upper left corner at `toSheet(board, [0, height])`.
 * `pointedPair(pointing, "centre line")` and the others give what `placeFrame` and `placeBrought` ask for.
 */
export function PointingSurface({ pointing, board, children, live, catching, label, whenAll }: Props) {
  const { finger, keyed, letGo, onKeyDown, svg } = usePointing(pointing, board, catching);
  const held = useCallback(() => {
    const { held } = pointing.getState();
    return held && toBoard(board, held.at);
  }, [pointing, board]);
  const drawn = useMemo(() => children, [children]);
  return (
    <div className="bring-drawing">
      <div
        className="draft-keys"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing surface worked by keys is an application region
        tabIndex={0}
        aria-label={`${label}. ${KEYS}`}
        onKeyDown={onKeyDown}
      >
        <Pane
          plane="plan"
          drawingId={DRAWING_ID}
          aria-hidden="true"
          onSecondFinger={letGo}
          {...svg}
          live={
            <>
              {live}
              <PointedMarks pointing={pointing} board={board} />
              <HeldMark pointing={pointing} board={board} />
            </>
          }
          over={
            finger ? <Magnifier plane="plan" drawingId={DRAWING_ID} mark={held} watch={pointing.subscribe} /> : null
          }
        >
          {drawn}
        </Pane>
        <HeldAloud pointing={pointing} board={board} keyed={keyed} />
      </div>
      <AskedNow pointing={pointing} whenAll={whenAll} />
      <ZoomRow pointing={pointing} />
    </div>
  );
}

const KEYS =
  "Arrows move what points, with Shift to the next end or middle of a line, with Alt by a hair; Enter sets the place, " +
  "Backspace takes the last one back, plus and minus zoom, 0 shows the whole.";

/** What to point at now, or why the last place could not be set. */
function AskedNow({ pointing, whenAll }: { readonly pointing: PointingStore; readonly whenAll: string | undefined }) {
  const words = useStore(pointing, (now) => now.trouble || (now.asked === null && whenAll) || sayAsked(now));
  const wrong = useStore(pointing, (now) => now.trouble !== "");
  return (
    <p className="bring-asked" data-wrong={wrong || undefined} aria-hidden="true">
      {words}
    </p>
  );
}

type Shown = { readonly pointing: PointingStore; readonly board: Board };

function HeldMark({ pointing, board }: Shown) {
  const { scaleRatio } = useSheet();
  const held = useStore(pointing, (now) => now.held);
  if (!held) return null;
  const at = toBoard(board, held.at);
  return (
    <>
      <OwnMark at={at} scaleRatio={scaleRatio} />
      {held.by && held.by !== "line" && <CaughtMark at={at} scaleRatio={scaleRatio} />}
    </>
  );
}

/** What is asked for, and where the keys hold what points, for readers of the screen. A pointer would have it told at every move. */
function HeldAloud({ pointing, board, keyed }: Shown & { readonly keyed: boolean }) {
  const words = useStore(pointing, (now) =>
    now.held && keyed ? `${sayCaughtBy(now.held.by)} ${sayShare(board, now.held.at)}` : now.trouble || sayAsked(now),
  );
  return (
    <p className="aloud" role="status" data-aloud="pointing">
      {words}
    </p>
  );
}
