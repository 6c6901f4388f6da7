import { type PlaneBox, planeBox } from "./clear-lettering";
import type { DisplayList } from "./display-list";

/** The smallest box round a display list at a drawing scale, its lettering included, metres; null when it is empty. */
export function displayBounds(list: DisplayList, scaleRatio: number): PlaneBox | null {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = (x: number, y: number) => {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  };
  for (const item of list) {
    if (item.kind === "stroke") for (const [x, y] of item.points) take(x, y);
    else {
      const box = planeBox(item, scaleRatio);
      take(box[0], box[1]);
      take(box[2], box[3]);
    }
  }
  return left <= right ? [left, bottom, right, top] : null;
}
