"use client";

import { useCallback, useMemo, useState } from "react";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { applyAffine } from "@/lib/draft/bring/affine";
import type { BroughtPoint } from "@/lib/draft/bring/brought";
import type { Heights } from "@/lib/draft/bring/place/as-brought-runs";
import type { LayerUse, Placed } from "@/lib/draft/bring/place/place-brought";
import { sayPlaced } from "@/lib/draft/bring/place/say-placed";
import { firstSizeChoice, type SizeChoice } from "@/lib/draft/bring/place/size-choices";
import { openCatching } from "@/lib/draft/bring/pointing/catch-place";
import type { LengthUnits } from "@/lib/measure/length";
import { goTo } from "../exercise/go-to";
import { usualHeights } from "../hand/measures";
import { layBoard } from "./board";
import type { BringDesk } from "./bring-desk";
import { BringSheet } from "./bring-sheet";
import { BroughtLines } from "./brought-lines";
import { ComesOut } from "./comes-out";
import { LayerList } from "./layer-list";
import { LeftOutList, sayNotUnderstood } from "./left-out-list";
import { OfferedLines, OfferedMarks } from "./offered-lines";
import { PlacedLines, wayBack } from "./placed-lines";
import { PointingSteps } from "./pointing-steps";
import { createPointing } from "./pointing-store";
import { PointingSurface } from "./pointing-surface";
import { firstPutOn, newUnits } from "./put-on-choices";
import { newPlan, putOnPlan } from "./put-on-plan";
import { ShowPlace, useShowPlace } from "./show-place";
import { SizeField } from "./size-field";
import { usePlacing } from "./use-placing";
import { usePlacingAsked } from "./use-placing-asked";
import { useTablePlan } from "./use-table-plan";
import type { ShownDrawing } from "./worker/messages";

type Props = { readonly desk: BringDesk; readonly drawing: ShownDrawing; readonly name: string };

/** A drawing that was read: where it lies on the stage, what its layers are, what comes out of it, and putting that on a plan. */
export function DrawingOnTable(props: Props) {
  const board = useMemo(() => layBoard(props.drawing.bounds), [props.drawing.bounds]);
  return (
    <BringSheet board={board}>
      <OnTable {...props} board={board} />
    </BringSheet>
  );
}

function OnTable({ desk, drawing, name, board }: Props & { readonly board: ReturnType<typeof layBoard> }) {
  const { bounds, layers, pieces, unit, found, notUnderstood } = drawing;
  const [size, setSize] = useState<SizeChoice | null>(() => firstSizeChoice(unit));
  const [pointing] = useState(() => createPointing(size?.scale === null));
  const [uses, setUses] = useState<Readonly<Record<string, LayerUse>>>(() =>
    Object.fromEntries(layers.map((layer) => [layer.name, layer.guess])),
  );
  const [lit, setLit] = useState<string | null>(null);
  const [written, setHeights] = useState<Heights | null>(null);
  const [on, setOn] = useState(() => firstPutOn(unit));
  const table = useTablePlan();
  const { shown, show } = useShowPlace(board);

  const own = newUnits(on);
  const plan = useMemo(() => (own ? newPlan(own, name) : (table?.history.draft ?? null)), [own, name, table]);
  const units = plan?.exercise.units ?? "ft-in";
  const heights = useMemo(() => written ?? usualHeights(units), [written, units]);
  const asked = usePlacingAsked({ pointing, size, uses, heights, units });
  const { placed, placing, working } = usePlacing(desk, asked.placing, plan);
  const back = useMemo(() => placing && wayBack(unit, placing), [placing, unit]);

  const isShown = useCallback(
    (layer: number) => {
      const each = layers[layer];
      return each !== undefined && (!each.hidden || uses[each.name] !== "ignore");
    },
    [layers, uses],
  );
  const catching = useMemo(() => openCatching(pieces, isShown), [pieces, isShown]);
  const chooseSize = (choice: SizeChoice | null) => {
    setSize(choice);
    pointing.getState().tell({ do: "ask size", asksSize: choice?.scale === null });
  };
  const put = (): string | null => {
    if (!placed?.ok || !plan) return "There is nothing to put there yet.";
    const done = putOnPlan(findShelf(), own ? null : table, plan, placed.edit, new Date().toISOString());
    if (!done.ok) return done.say;
    goTo("/draft");
    return null;
  };
  const leftOut = useMemo(
    () =>
      placed?.ok && back
        ? placed.leftOut.map(({ say, at }) => ({
            key: say,
            say,
            at: at.map((each): BroughtPoint => applyAffine(back, each)),
          }))
        : [],
    [placed, back],
  );

  return (
    <div className="draft-sheet bring-sheet ruled">
      <PointingSurface
        pointing={pointing}
        board={board}
        catching={catching}
        label="The drawing that was brought"
        whenAll={sayOut(asked.missing, placed, units)}
        live={
          <>
            {placed?.ok && back && <PlacedLines placed={placed} back={back} board={board} />}
            <OfferedMarks pointing={pointing} found={found} board={board} />
            <ShowPlace board={board} at={shown} />
          </>
        }
      >
        <BroughtLines layers={layers} isShown={isShown} lit={lit} />
      </PointingSurface>
      <div className="draft-content bring-side">
        <OfferedLines pointing={pointing} found={found} />
        <SizeField unit={unit} bounds={bounds} units={units} size={size} onSize={chooseSize} />
        <PointingSteps pointing={pointing} units={units} />
        <LayerList
          layers={layers}
          uses={uses}
          lit={lit}
          onUse={(layer, use) => setUses((before) => ({ ...before, [layer]: use }))}
          onLit={setLit}
        />
        <ComesOut
          placed={placed}
          working={working}
          missing={asked.missing}
          units={units}
          heights={heights}
          onHeights={setHeights}
          on={on}
          table={table?.history.draft.exercise.title ?? null}
          onPutOn={setOn}
          onPut={put}
        />
        <LeftOutList title="Left out" note="Of the layers that are walls and openings." list={leftOut} onShow={show} />
        <LeftOutList
          title="Not understood"
          note="What is no line of a plan, or cannot be read, stays in the file."
          list={sayNotUnderstood(notUnderstood)}
          onShow={show}
        />
      </div>
    </div>
  );
}

/** What came out so far, for under the drawing. */
function sayOut(missing: string, placed: Placed | null, units: LengthUnits): string {
  if (missing !== "" || !placed) return missing;
  return placed.ok ? (sayPlaced(placed.draft, placed.made, units)[0] ?? "") : placed.say;
}
