import type { Stroke } from "./draw-on";
import { panel, stroke } from "./draw-on";
import type { Stretch } from "./piece";

/** A handle is about this long, metres. */
const HANDLE_M = 0.12;

/** Drawer fronts drawn one over another on an upright plane at v, each with its handle. */
export function drawers(
  name: string,
  v: number,
  [u0, u1]: Stretch,
  [w0, w1]: Stretch,
  count: number,
): readonly Stroke[] {
  const high = (w1 - w0) / count;
  const gap = Math.min(0.03, high * 0.12, (u1 - u0) * 0.06);
  const half = Math.min(HANDLE_M, (u1 - u0) * 0.3) / 2;
  const middle = (u0 + u1) / 2;
  return Array.from({ length: count }, (_, i) => {
    const [low, top] = [w0 + i * high, w0 + (i + 1) * high];
    const grip = (low + top) / 2 + high * 0.08;
    return [
      panel(`${name}.${i + 1}`, v, [u0 + gap, u1 - gap], [low + gap, top - gap]),
      stroke(`${name}.${i + 1}.handle`, [middle - half, v, grip], [middle + half, v, grip]),
    ];
  }).flat();
}
