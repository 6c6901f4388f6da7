import Flatbush from "flatbush";
import { subtract, unit } from "../../../geometry/vector";
import type { BroughtLine, BroughtPoint } from "../brought";
import { broughtBounds } from "../brought-bounds";
import type { PointedLine } from "./place-frame";

/** So many ends tell whether a set is alike on both sides; more would only take longer. */
const MOST_MIRRORED = 600;
/** An image is where another end is when it is off by no more than this share of the drawing's size. */
const SAME_PLACE = 0.004;
/** Ends nearer to the line than this share of the drawing's size are their own images, and say nothing. */
const ON_LINE = 0.01;
/** Fewer ends are alike on both sides of many lines. */
const FEWEST_ENDS = 6;

/** The ends and corners of lines, made ready for being mirrored. */
export type MirrorEnds = {
  readonly ends: readonly BroughtPoint[];
  /** Half way between the outermost of them. */
  readonly middle: BroughtPoint;
  readonly size: number;
  readonly boxes: Flatbush;
};

/** Null where there are too few to tell. */
export function mirrorEnds(lines: readonly BroughtLine[]): MirrorEnds | null {
  const ends = lines.flatMap(({ points, curved }) =>
    curved ? points.filter((_, i) => i % points.length === 0) : points,
  );
  const bounds = broughtBounds([{ lines }]);
  if (ends.length < FEWEST_ENDS || !bounds) return null;
  const { least, most } = bounds;
  const boxes = new Flatbush(ends.length);
  for (const [x, y] of ends) boxes.add(x, y, x, y);
  boxes.finish();
  return {
    ends,
    middle: [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2],
    size: Math.max(most[0] - least[0], most[1] - least[1]),
    boxes,
  };
}

/** The share of the ends, 0 to 1, whose image across a line is an end as well; 0 where too few lie off the line to tell. */
export function mirrorShare({ ends, size, boxes }: MirrorEnds, line: PointedLine): number {
  const along = unit(subtract(line[1], line[0]));
  if (!along) return 0;
  const slack = SAME_PLACE * size;
  const every = Math.ceil(ends.length / MOST_MIRRORED);
  let [off, alike] = [0, 0];
  for (let i = 0; i < ends.length; i += every) {
    const [x, y] = subtract(ends[i] as BroughtPoint, line[0]);
    const aside = along[0] * y - along[1] * x;
    if (Math.abs(aside) < ON_LINE * size) continue;
    off += 1;
    const [imageX, imageY] = [line[0][0] + x + 2 * aside * along[1], line[0][1] + y - 2 * aside * along[0]];
    if (boxes.search(imageX - slack, imageY - slack, imageX + slack, imageY + slack).length > 0) alike += 1;
  }
  return off >= FEWEST_ENDS ? alike / off : 0;
}
