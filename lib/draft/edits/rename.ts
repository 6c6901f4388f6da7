import type { Renaming } from "./changed";

/** The points of a corner, platform, stair, piece, column or masking that has another name now. */
export function renameElement(before: string, after: string): Renaming {
  return (point) => {
    const [element, ...parts] = point.split(".");
    return element === before ? [after, ...parts].join(".") : point;
  };
}

/** The points of a wall's openings, and the tops of its corners that bear its name. */
export function renameWall(before: string, after: string): Renaming {
  return (point) => {
    const [element, part, wall, ...parts] = point.split(".");
    if (part === "top" && parts.length === 0) return wall === before ? `${element}.top.${after}` : point;
    return element === before ? [after, part, wall, ...parts].join(".") : point;
  };
}

/** The points of an opening that has another name, or stands in another wall now. */
export function renameOpening(
  before: { readonly wall: string; readonly id: string },
  after: { readonly wall: string; readonly id: string },
): Renaming {
  return (point) => {
    const [wall, id, ...parts] = point.split(".");
    return wall === before.wall && id === before.id && parts.length === 2
      ? [after.wall, after.id, ...parts].join(".")
      : point;
  };
}
