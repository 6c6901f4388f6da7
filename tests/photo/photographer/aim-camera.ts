import type { PaperSize } from "@/lib/sheet/paper-size";
import { type Camera, cameraAxes, seeSheet } from "./camera";
import type { Conditions } from "./conditions";
import { curlPaper } from "./curl";

/** Rounds of stepping back and aside until the paper fills the frame as asked. */
const ROUNDS = 30;
/** A photograph's long side over its short one: a telephone's. */
const SHAPE = 4 / 3;

/** A camera held so that the paper fills its frame as the conditions say. */
export function aimCamera(conditions: Conditions, { widthMm, heightMm }: PaperSize): Camera {
  const { megapixels, frame, fill, off, focal, k1 } = conditions;
  const short = Math.round(Math.sqrt((megapixels * 1e6) / SHAPE));
  const long = Math.round(short * SHAPE);
  const [width, height] = frame === "portrait" ? [short, long] : [long, short];
  const axes = cameraAxes(conditions.tiltDeg, conditions.leanDeg, conditions.turnDeg);
  const [right, down, ahead] = axes;
  const focalPx = focal * Math.hypot(width, height);
  const curl = curlPaper(conditions.curlMm, conditions.curlDeg, widthMm, heightMm);
  let distance = 2 * heightMm;
  let target: readonly [number, number] = [widthMm / 2, heightMm / 2];
  const camera = (): Camera => {
    const at = [target[0] - distance * ahead[0], target[1] - distance * ahead[1], -distance * ahead[2]] as const;
    return { width, height, focalPx, k1, at, axes, curl };
  };
  const corners = [
    [0, 0],
    [widthMm, 0],
    [widthMm, heightMm],
    [0, heightMm],
  ] as const;
  for (let i = 0; i < ROUNDS; i++) {
    const seen = corners.map((corner) => seeSheet(camera(), corner));
    const [xs, ys] = [seen.map(([x]) => x), seen.map(([, y]) => y)];
    const [left, top] = [Math.min(...xs), Math.min(...ys)];
    const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - top];
    const perPx = distance / focalPx;
    const [dx, dy] = [left + wide / 2 - (0.5 + off[0]) * width, top + high / 2 - (0.5 + off[1]) * height];
    target = [target[0] + perPx * (dx * right[0] + dy * down[0]), target[1] + perPx * (dx * right[1] + dy * down[1])];
    distance *= Math.max(wide / width, high / height) / fill;
  }
  return camera();
}
