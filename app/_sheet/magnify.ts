import type { PxSize, View } from "./view";

/** How much the glass magnifies, and its width on the screen, pixels. */
export const POWER = 3;
export const GLASS_PX = 148;

/** What the glass shows of a pane: the place looked at in its middle. */
export function magnify(view: View, [x, y]: readonly [number, number]): { readonly view: View; readonly size: PxSize } {
  const pxPerMetre = view.pxPerMetre * POWER;
  const origin = [GLASS_PX / 2 - x * pxPerMetre, GLASS_PX / 2 + y * pxPerMetre] as const;
  return { view: { ...view, pxPerMetre, origin }, size: { width: GLASS_PX, height: GLASS_PX } };
}
