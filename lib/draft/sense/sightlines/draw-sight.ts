import type { DisplayItem, DisplayList } from "../../../drawing/display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../../../drawing/make-stroke";
import type { Glimpse } from "./fan";
import { hatchOutline } from "./hatch-outline";
import type { Sight } from "./sight";

/** Between the lines of the hatching, and half across the seat's mark, millimetres of paper. */
const HATCH_MM = 2;
const SEAT_MM = 1.6;

/**
 * What a seat sees, to be laid over the ground plan: the seat, its lines to the edges of what it sees in blue pencil, and in red
 * what it sees offstage, hatched. Plan metres.
 */
export function drawSight({ seat, seen, offstage }: Sight, scaleRatio: number): DisplayList {
  const mm = scaleRatio / 1000;
  const [x, y] = seat.at;
  const arm = SEAT_MM * mm;
  const edges = seen.flatMap((outline, i): readonly DisplayItem[] => [
    makeStroke(`sight.seen.${i + 1}`, outline, { closed: true, pencil: "blue" }),
  ]);
  const corners = seen.flat().filter(([, up]) => up <= SAME_PLACE_M);
  const across = corners.map(([over]) => over);
  const rays = across.length === 0 ? [] : [Math.min(...across), Math.max(...across)];
  return [
    ...offstage.flatMap(({ what, outlines }) =>
      outlines.flatMap((outline, i): readonly DisplayItem[] => {
        const id = `sight.${nameGlimpse(what)}.${i + 1}`;
        return [
          ...hatchOutline(outline, HATCH_MM * mm).map((line, k) =>
            makeStroke(`${id}.hatch.${k + 1}`, line, { pencil: "red" }),
          ),
          makeStroke(`${id}.edge`, outline, { closed: true, pencil: "red", line: "hidden" }),
        ];
      }),
    ),
    ...edges,
    ...rays.map((over, i) => makeStroke(`sight.ray.${i + 1}`, [seat.at, [over, 0]], { pencil: "blue" })),
    makeStroke(
      "sight.seat",
      [
        [x - arm, y - arm],
        [x + arm, y - arm],
        [x + arm, y + arm],
        [x - arm, y + arm],
      ],
      { closed: true, weight: "thick", fill: "paper" },
    ),
    makeLettering("sight.seat.name", seat.at, "SEAT", {
      heightMm: LETTER_MM.small,
      shiftMm: [0, -SEAT_MM - LETTER_MM.small - 1],
    }),
  ];
}

/** What lies on the plaster line. */
const SAME_PLACE_M = 1e-6;

function nameGlimpse(what: Glimpse): string {
  if (what.kind === "past") return `past.${what.side}`;
  return what.thing.kind === "opening"
    ? `${what.kind}.${what.thing.wall}.${what.thing.id}`
    : `${what.kind}.${what.thing.id}`;
}
