import type { Plan, Stair } from "../../plan/plan";
import { landsOnPlatform } from "../../plan/stair-landing";
import { type Nosing, stairNosings } from "../../plan/stair-nosings";
import type { Stage } from "../../stage/stage";
import { arrowHead } from "../arrow-head";
import { clearest, type Drawn } from "../clear-lettering";
import type { DisplayItem, DrawingPoint, Lettering } from "../display-list";
import { allInFrame, inFrame, type LocalFrame } from "../local-frame";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/**
 * A flight in plan: its nosings, its sides, and an arrow up from its foot. It ends at its top nosing when a platform of
 * that level goes on from there, and with one more tread when none does. Nothing when the nosing has no length.
 */
export function drawStair(
  plan: Plan,
  stair: Stair,
  stage: Pick<Stage, "rake">,
  scaleRatio: number,
): readonly DisplayItem[] {
  const nosings = stairNosings(stair, stage);
  const flight = flightFrame(stair, nosings);
  if (!flight) return [];
  const id = `plan.stair.${stair.id}`;
  const { frame, width } = flight;
  const landed = landsOnPlatform(plan, stair, stage);
  const run = (stair.steps - (landed ? 1 : 0)) * stair.tread;
  const nosingLine = (v: number): DrawingPoint[] =>
    allInFrame(frame, [
      [0, v],
      [width, v],
    ]);
  const mm = scaleRatio / 1000;
  const tail = inFrame(frame, width / 2, -2.5 * mm);
  const tip = inFrame(frame, width / 2, Math.max(run - Math.min(1.5 * mm, stair.tread / 4), stair.tread / 2));
  return [
    makeStroke(
      `${id}.run`,
      allInFrame(frame, [
        [0, 0],
        [0, run],
        [width, run],
        [width, 0],
      ]),
      {
        closed: true,
        fill: "paper",
        weight: "thick",
        hand: true,
      },
    ),
    ...nosings
      .slice(1)
      .map((_, i) => makeStroke(`${id}.nosing.${i + 2}`, nosingLine((i + 1) * stair.tread), { hand: true })),
    makeStroke(`${id}.up`, [tail, tip]),
    makeStroke(`${id}.up.head`, arrowHead(tail, tip, 2.2 * mm)),
  ];
}

/** UP and the number of risers, at the arrow's tail. */
export function letterStair(stair: Stair, stage: Pick<Stage, "rake">, drawn: Drawn): readonly Lettering[] {
  const flight = flightFrame(stair, stairNosings(stair, stage));
  if (!flight) return [];
  const heightMm = LETTER_MM.figure;
  const { frame, width } = flight;
  const mm = drawn.scaleRatio / 1000;
  const [right, up] = frame.across;
  const text = `UP ${stair.steps} R`;
  const places = [width / 2, width / 2 + 6 * mm, width / 2 - 6 * mm].flatMap((u) =>
    [3.4, 5, 7].map((below) =>
      makeLettering(`plan.stair.${stair.id}.up.name`, inFrame(frame, u, -below * mm), text, {
        heightMm,
        anchor: right > 0.7 ? "end" : right < -0.7 ? "start" : "middle",
        shiftMm: [0, -heightMm / 2 - (up * heightMm) / 2],
      }),
    ),
  );
  return [clearest(places, drawn)];
}

type Flight = { readonly frame: LocalFrame; readonly width: number };

/** Origin at the first end of the lowest nosing, u along it, v the way the flight climbs. */
function flightFrame(stair: Stair, nosings: readonly Nosing[]): Flight | null {
  const lowest = nosings[0];
  if (!lowest) return null;
  const [[ax, ay], [bx, by]] = stair.nosing;
  const width = Math.hypot(bx - ax, by - ay);
  const along: DrawingPoint = [(bx - ax) / width, (by - ay) / width];
  return { frame: { origin: [ax, ay], along, across: [-along[1], along[0]] }, width };
}
