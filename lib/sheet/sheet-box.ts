/** A rectangle on a sheet of paper: millimetres from its upper left corner, right and down. */
export type SheetBox = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** A box of a size by its upper left corner. */
export function sheetBox(left: number, top: number, width: number, height: number): SheetBox {
  return { left, top, right: left + width, bottom: top + height };
}

/** A box with so many millimetres more on every side. */
export function grow({ left, top, right, bottom }: SheetBox, by: number): SheetBox {
  return { left: left - by, top: top - by, right: right + by, bottom: bottom + by };
}

/** Whether two boxes share more than an edge. */
export function overlap(a: SheetBox, b: SheetBox): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Whether a box lies within another, edges included. */
export function holds(outer: SheetBox, inner: SheetBox): boolean {
  return (
    inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom
  );
}
