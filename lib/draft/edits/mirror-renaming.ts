import type { Renaming } from "./changed";
import type { Selection } from "./selection";

const OTHER_END: Readonly<Record<string, string>> = { start: "end", end: "start" };

/** Corners of a piece of furniture, as mirroring exchanges left and right: 1 and 2 are near, 3 and 4 far. */
const OTHER_CORNER: Readonly<Record<string, string>> = { "1": "2", "2": "1", "3": "4", "4": "3" };

/** What was the start jamb of a mirrored wall's opening is its end jamb now; likewise nosings, and left and right of furniture. */
export function mirrorRenaming({ stairs, furniture }: Selection, walls: ReadonlySet<string>): Renaming {
  return (point) => {
    const [element = "", part = "", end = "", ...parts] = point.split(".");
    if (walls.has(element) && parts.length === 1) return [element, part, OTHER_END[end] ?? end, ...parts].join(".");
    if (stairs.has(element)) return [element, part, OTHER_END[end] ?? end].join(".");
    if (furniture.has(element)) return [element, OTHER_CORNER[part] ?? part, end].join(".");
    return point;
  };
}
