"use client";

import { type PointerEvent, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { Press } from "@/app/_parts/press";
import { BOARD_RATIO } from "@/app/_photo/corner-lines";
import { Handle } from "@/app/_photo/handle";
import { HandledPhoto } from "@/app/_photo/handled-photo";
import { PhotoSheet } from "@/app/_photo/photo-pane";
import { useHandles } from "@/app/_photo/use-handles";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { Bounds } from "@/app/_sheet/view";
import { whoseEye } from "@/lib/perspective/whose-eye/whose-eye";
import { CheckFrame } from "../check-frame";
import { AnswerPanel } from "./answer-panel";
import { boundsOf, boundsWithMeetings } from "./board";
import { useEye, useEyeRoom } from "./eye-context";
import { EyeLines } from "./eye-lines";
import { countMarks, type EyeWork, gripAfter, gripsOf, markOfGrip, type Spot, spotOf } from "./eye-work";
import { MarksPanel } from "./marks-panel";
import { OnHand } from "./on-hand";
import { readEyeWork } from "./read-eye-work";
import { sayInShort } from "./say-marks";

const WORDS =
  "The picture with a handle at each end of what is marked. Arrows move the one on hand, Shift for large steps, Alt for fine ones, Enter goes on to the next, Backspace takes a step back, plus and minus zoom.";

/** The picture, what is marked on it, and what that tells of the eye, live. */
export function EyeBoard({ work }: { readonly work: EyeWork }) {
  const read = useMemo(() => readEyeWork(work), [work]);
  const { widthMm } = read;
  const bounds = useMemo(() => boundsOf(work.photo, widthMm), [work.photo, widthMm]);
  return (
    <PhotoSheet key={work.photo.address} bounds={bounds} scaleRatio={BOARD_RATIO}>
      <Board work={work} read={read} bounds={bounds} />
    </PhotoSheet>
  );
}

type Props = { readonly work: EyeWork; readonly read: ReturnType<typeof readEyeWork>; readonly bounds: Bounds };

function Board({ work, read, bounds }: Props) {
  const { store } = useEyeRoom();
  const { views } = useSheet();
  const selected = useEye((eye) => eye.selected);
  const keeping = useEye((state) => state.keeping);
  const [wide, setWide] = useState(false);
  const { drawing, widthMm, units } = read;
  const eye = useMemo(() => (countMarks(drawing) > 0 ? whoseEye(drawing, units) : null), [drawing, units]);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus({ preventScroll: true }), []);
  // Another width is another board: the same field goes on being typed in.
  useLayoutEffect(() => {
    setWide(false);
    views.getState().lay("never", bounds, bounds);
  }, [views, bounds]);

  const place = useCallback(([right, up]: Spot): Spot => [right * widthMm, up * widthMm], [widthMm]);
  const onHand = useCallback(() => {
    const { work: now, selected: grip } = store.getState();
    const spot = now && spotOf(now, grip);
    return spot ? place(spot) : null;
  }, [store, place]);
  /** A handle that is not set yet is set wherever the press comes down, be it on another handle. */
  const isUnset = () => {
    const { work: now, selected: grip } = store.getState();
    return now !== null && grip !== null && spotOf(now, grip) === null;
  };
  const { select, begin, rest, undo, goOn } = store.getState();
  const handles = useHandles({
    plane: "picture",
    bounds,
    places: () =>
      new Map(
        (isUnset() ? [] : gripsOf(store.getState().work ?? work)).flatMap(([grip, spot]) =>
          spot ? [[grip, place(spot)] as const] : [],
        ),
      ),
    selected: () => store.getState().selected,
    select,
    begin,
    move: ([x, y]) => store.getState().move([x / widthMm, y / widthMm]),
    rest,
    undo,
    settle: goOn,
  });
  const setsOne = useRef(false);
  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.isPrimary) setsOne.current = isUnset();
    handles.svg.onPointerDown(event);
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    handles.svg.onPointerUp(event);
    if (!setsOne.current) return;
    setsOne.current = false;
    const { work: now, selected: grip } = store.getState();
    if (!now || !grip || spotOf(now, grip) === null) return;
    const next = gripAfter(now, grip);
    if (markOfGrip(next) === markOfGrip(grip) && spotOf(now, next) === null) select(next);
  };
  const showWide = () => {
    const shown = wide ? bounds : boundsWithMeetings(bounds, eye);
    setWide(!wide);
    views.getState().lay("never", shown, shown);
  };
  const around = boundsWithMeetings(bounds, wide ? eye : null);
  return (
    <CheckFrame title="Check" board>
      <div className="check-sheet eye-sheet ruled">
        <HandledPhoto
          plane="picture"
          label={WORDS}
          address={work.photo.address}
          bounds={bounds}
          handles={handles}
          svg={{ onPointerDown, onPointerUp }}
          onHand={onHand}
          watch={store.subscribe}
          caption="The drawing"
          live={
            <>
              <EyeLines drawing={drawing} eye={eye} left={around.left} right={around.right} />
              {gripsOf(work).map(([grip, spot]) =>
                spot ? (
                  <g key={grip} data-handle={grip} className={grip === selected ? "" : "eye-grip"}>
                    <Handle
                      at={place(spot)}
                      scaleRatio={BOARD_RATIO}
                      look={grip === selected ? "selected" : "sure"}
                      letters={lettersOf(grip)}
                    />
                  </g>
                ) : null,
              )}
            </>
          }
          tools={
            <Press weight="small" aria-pressed={wide} onClick={showWide}>
              Room round it
            </Press>
          }
        />
        <section className="check-side eye-side" aria-label="Marks and answer">
          <div className="check-side-head">
            <h1 ref={head} tabIndex={-1} className="check-side-title">
              Whose eye drew this?
            </h1>
            <p className="eye-short" role="status">
              {sayInShort(eye)}
            </p>
            {!keeping && <p className="check-note">This browser keeps nothing: what you mark is gone on a reload.</p>}
          </div>
          <div className="eye-rows">
            <OnHand work={work} nudge={handles.nudge} />
            <MarksPanel work={work} troubles={read.troubles} />
          </div>
          <AnswerPanel work={work} drawing={drawing} eye={eye} />
          <div className="check-side-foot">
            <Press onClick={() => store.getState().show({ at: "straighten" })}>Straighten it</Press>
            <Press onClick={() => store.getState().startAnew()}>Another picture</Press>
          </div>
        </section>
      </div>
    </CheckFrame>
  );
}

/** What stands beside a handle: a line's name at its first end, and each corner's number. */
function lettersOf(grip: string): string {
  const id = markOfGrip(grip);
  const end = Number(grip.slice(id.length + 1));
  if (id === "F") return String(end + 1);
  return end === 0 ? id : "";
}
