import { arcPoints } from "../arc-points";
import type { DrawingPoint } from "../display-list";
import { smoothLine, smoothLoop } from "../smooth-points";

/** One line of the figure: u to the viewer's right and v up, both in statures, its feet on v = 0. */
export type FigureLine = { readonly part: string; readonly points: readonly DrawingPoint[]; readonly closed: boolean };

/** Shoes, trousers and a coat, seen from the front, the weight on the figure's right leg; back to front. */
export function figureOutline(): readonly FigureLine[] {
  return [
    loop("leg.standing", STANDING_LEG),
    loop("leg.free", FREE_LEG),
    loop("arm.left", ARM_LEFT),
    loop("arm.right", ARM_RIGHT),
    loop("coat", COAT),
    { part: "coat.front", points: smoothLine(COAT_FRONT), closed: false },
    { part: "collar", points: smoothLine(COLLAR), closed: false },
    { part: "head", points: arcPoints([0.006, 0.934], [0.046, 0.066], 0, 2 * Math.PI).slice(0, -1), closed: true },
  ];
}

function loop(part: string, points: readonly DrawingPoint[]): FigureLine {
  return { part, points: smoothLoop(points), closed: true };
}

const STANDING_LEG: readonly DrawingPoint[] = [
  [-0.085, 0.44],
  [-0.082, 0.28],
  [-0.072, 0.12],
  [-0.07, 0.04],
  [-0.085, 0.012],
  [-0.07, 0],
  [-0.038, 0.004],
  [-0.028, 0.04],
  [-0.02, 0.16],
  [-0.008, 0.3],
  [0, 0.44],
];
const FREE_LEG: readonly DrawingPoint[] = [
  [0, 0.44],
  [0.022, 0.3],
  [0.046, 0.16],
  [0.06, 0.045],
  [0.066, 0.012],
  [0.095, 0],
  [0.118, 0.006],
  [0.112, 0.026],
  [0.098, 0.05],
  [0.096, 0.16],
  [0.09, 0.3],
  [0.085, 0.44],
];
const ARM_LEFT: readonly DrawingPoint[] = [
  [-0.1, 0.822],
  [-0.128, 0.77],
  [-0.142, 0.66],
  [-0.15, 0.56],
  [-0.152, 0.47],
  [-0.148, 0.43],
  [-0.134, 0.425],
  [-0.126, 0.46],
  [-0.118, 0.56],
  [-0.1, 0.68],
  [-0.08, 0.78],
];
const ARM_RIGHT: readonly DrawingPoint[] = [
  [0.1, 0.822],
  [0.13, 0.77],
  [0.152, 0.68],
  [0.163, 0.6],
  [0.14, 0.55],
  [0.105, 0.525],
  [0.085, 0.535],
  [0.1, 0.562],
  [0.122, 0.605],
  [0.112, 0.68],
  [0.08, 0.78],
];
const COAT: readonly DrawingPoint[] = [
  [-0.025, 0.868],
  [-0.06, 0.845],
  [-0.1, 0.825],
  [-0.108, 0.76],
  [-0.09, 0.66],
  [-0.086, 0.6],
  [-0.1, 0.5],
  [-0.108, 0.4],
  [-0.05, 0.386],
  [0.03, 0.386],
  [0.108, 0.4],
  [0.1, 0.5],
  [0.086, 0.6],
  [0.09, 0.66],
  [0.108, 0.76],
  [0.1, 0.825],
  [0.062, 0.845],
  [0.03, 0.868],
];
const COAT_FRONT: readonly DrawingPoint[] = [
  [0.006, 0.8],
  [0.012, 0.68],
  [0.008, 0.54],
  [0.014, 0.388],
];
const COLLAR: readonly DrawingPoint[] = [
  [-0.03, 0.865],
  [-0.012, 0.83],
  [0.006, 0.8],
  [0.022, 0.832],
  [0.034, 0.865],
];
