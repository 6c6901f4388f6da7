import type { DisplayItem, DrawingPoint } from "../display-list";
import { makeStroke } from "../make-stroke";

/** The stub of the proscenium wall shown each side of the opening, and its cut thickness, metres (18 in). */
export const STUB_M = 1.2;
export const STUB_THICKNESS_M = 0.4572;
/** Spacing of the section's hatching, millimetres of paper. */
const HATCH_MM = 1.8;

/** A piece of wall in section: extra thick where it is cut at the opening, hatched, and broken off at its outer end. */
export function drawStub(side: string, [jamb, outer]: readonly [number, number], mm: number): DisplayItem[] {
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
