import type { Stage } from "../../stage/stage";
import { arrowHead } from "../arrow-head";
import type { DisplayItem, DrawingPoint } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/** The stub of the proscenium wall shown each side of the opening, and its cut thickness, metres (18 in). */
const STUB_M = 1.2;
const STUB_THICKNESS_M = 0.4572;
/** Spacing of the section's hatching, millimetres of paper. */
const HATCH_MM = 1.8;
/** How far the centre line runs past the stage, and the plaster line past the stubs, millimetres of paper. */
const PAST_MM = 6;
/** How far beside the stage the rake is noted, millimetres of paper. */
const RAKE_ASIDE_MM = 5;

/**
 * The stage in plan, metres: the floor's sides and back (faint), the apron's edge, the proscenium wall cut either side of
 * the opening (downstage of the plaster line, which is its upstage face here), the plaster line and the centre line.
 * `scaleRatio` ties the paper's millimetres to metres.
 */
export function drawStageBox(stage: Stage, scaleRatio: number): readonly DisplayItem[] {
  const half = stage.opening.width / 2;
  const mm = scaleRatio / 1000;
  const end = half + STUB_M + PAST_MM * mm;
  const below = -Math.max(stage.apron, STUB_THICKNESS_M) - PAST_MM * mm;
  const above = stage.depth + PAST_MM * mm;
  return [
    makeStroke("plan.stage.floor", floorOutline(stage, half), { faint: true }),
    ...(stage.apron > 0 ? [makeStroke("plan.stage.apron", apronOutline(stage, half), { weight: "thick" })] : []),
    ...drawStub("left", [-half, -half - STUB_M], mm),
    ...drawStub("right", [half, half + STUB_M], mm),
    makeStroke(
      "plan.stage.plaster-line",
      [
        [-end, 0],
        [end, 0],
      ],
      { line: "plaster", weight: "thick" },
    ),
    makeStroke(
      "plan.stage.centre-line",
      [
        [0, below],
        [0, above],
      ],
      { line: "centre" },
    ),
    makeLettering("plan.stage.plaster-line.name", [half, -STUB_THICKNESS_M], "PLASTER LINE", {
      heightMm: LETTER_MM.figure,
      anchor: "start",
      shiftMm: [0.8, -LETTER_MM.figure - 1.6],
    }),
    ...letterCentreLine([0, below], LETTER_MM.name),
    ...drawRake(stage, half, mm),
  ];
}

function floorOutline({ depth }: Stage, half: number): DrawingPoint[] {
  return [
    [-half, 0],
    [-half, depth],
    [half, depth],
    [half, 0],
  ];
}

function apronOutline({ apron }: Stage, half: number): DrawingPoint[] {
  return [
    [-half, 0],
    [-half, -apron],
    [half, -apron],
    [half, 0],
  ];
}

/** A piece of wall in section: extra thick where it is cut at the opening, hatched, and broken off at its outer end. */
function drawStub(side: string, [jamb, outer]: readonly [number, number], mm: number): DisplayItem[] {
  const id = `plan.stage.proscenium.${side}`;
  const low = -STUB_THICKNESS_M;
  const away = Math.sign(outer - jamb);
  const [nick, middle] = [away * 1.2 * mm, low / 2];
  const broken: DrawingPoint[] = [
    [outer, 0],
    [outer, middle + mm],
    [outer + nick, middle + mm / 2],
    [outer - nick, middle - mm / 2],
    [outer, middle - mm],
    [outer, low],
  ];
  return [
    makeStroke(
      `${id}.cut`,
      [
        [jamb, 0],
        [outer, 0],
        [outer, low],
        [jamb, low],
      ],
      { closed: true, fill: "wall", fillOnly: true },
    ),
    ...hatch(id, Math.min(jamb, outer), Math.max(jamb, outer), low, HATCH_MM * mm),
    makeStroke(`${id}.break`, broken),
    makeStroke(
      `${id}.face`,
      [
        [outer, 0],
        [jamb, 0],
        [jamb, low],
        [outer, low],
      ],
      { weight: "extra-thick" },
    ),
  ];
}

/** Lines at 45 degrees across a strip that hangs from y = 0 down to `low`, cut off at its ends. */
function hatch(id: string, left: number, right: number, low: number, spacing: number): DisplayItem[] {
  const lines = Math.floor((right - left - low) / spacing);
  return Array.from({ length: lines }, (_, i) => {
    const x = left + low + (i + 0.5) * spacing;
    const [start, end] = [Math.max(x, left), Math.min(x - low, right)];
    return makeStroke(
      `${id}.hatch.${i + 1}`,
      [
        [start, low + start - x],
        [end, low + end - x],
      ],
      { faint: true },
    );
  });
}

/** The drafter's sign for a centre line: a C crossed by an L. */
function letterCentreLine(at: DrawingPoint, heightMm: number): DisplayItem[] {
  return [
    makeLettering("plan.stage.centre-line.c", at, "C", { heightMm, shiftMm: [-0.7, -heightMm - 0.8] }),
    makeLettering("plan.stage.centre-line.l", at, "L", { heightMm, shiftMm: [0.7, -heightMm - 1.8] }),
  ];
}

/** A rake, beside the stage at stage left, where no scenery stands: the way up, and the ratio it rises at. */
function drawRake({ rake, depth }: Stage, half: number, mm: number): DisplayItem[] {
  if (rake === 0) return [];
  const x = half + RAKE_ASIDE_MM * mm;
  const [tail, tip]: [DrawingPoint, DrawingPoint] =
    rake > 0
      ? [
          [x, depth * 0.4],
          [x, depth * 0.6],
        ]
      : [
          [x, depth * 0.6],
          [x, depth * 0.4],
        ];
  return [
    makeStroke("plan.stage.rake.arrow", [tail, tip]),
    makeStroke("plan.stage.rake.head", arrowHead(tail, tip, 2.4 * mm)),
    makeLettering("plan.stage.rake.up", tail, "UP", {
      heightMm: LETTER_MM.figure,
      shiftMm: [0, rake > 0 ? -LETTER_MM.figure - 1 : 1],
    }),
    makeLettering("plan.stage.rake.ratio", [x, depth / 2], `RAKE ${printRake(rake)}`, {
      heightMm: LETTER_MM.figure,
      anchor: "start",
      shiftMm: [1.6, -LETTER_MM.figure / 2],
    }),
  ];
}

/** A rake as it is said: 1 IN 20, to a tenth where it is not whole. */
export function printRake(rake: number): string {
  return `1 IN ${Math.round(10 / Math.abs(rake)) / 10}`;
}
