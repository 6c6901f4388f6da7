import { type Stroke, stroke } from "./draw-on";
import type { Stretch } from "./piece";
import { partsIn } from "./thickness";

/** Key lines are drawn about this far apart, metres: fewer than the keys there are, so that they stay apart on paper. */
const KEY_LINE_M = 0.1;
/** The keys' own height, metres, and at most this share of the bed they lie in. */
const KEY_M = 0.05;
const KEY_SHARE = 0.5;

/** What is drawn of the keys on the level top of a key bed and on its front. */
export function pianoKeys(
  [u0, u1]: Stretch,
  [v0, v1]: Stretch,
  [low, w]: Stretch,
): { readonly top: readonly Stroke[]; readonly front: readonly Stroke[] } {
  const back = v0 + (v1 - v0) * 0.66;
  const lip = w - Math.min(KEY_M, (w - low) * KEY_SHARE);
  const count = partsIn(u1 - u0, KEY_LINE_M, 3, 24);
  const places = Array.from({ length: count - 1 }, (_, i) => u0 + ((i + 1) * (u1 - u0)) / count);
  return {
    top: [
      stroke("key-rail", [u0, back, w], [u1, back, w]),
      ...places.map((u, i) => stroke(`key.${i + 1}`, [u, v0, w], [u, back, w])),
    ],
    front: [
      stroke("key-lip", [u0, v0, lip], [u1, v0, lip]),
      ...places.map((u, i) => stroke(`key.front.${i + 1}`, [u, v0, lip], [u, v0, w])),
    ],
  };
}
