import sharp from "sharp";
import { FOOT_M } from "@/lib/measure/length";

export type Pair = readonly [number, number];

/** The picture's size, pixels. */
export const PICTURE = { width: 1600, height: 1200 } as const;

/** A plan on paper, feet: a set of four walls on no grid, the two lines, and a frame of 36 by 27 feet drawn round all of it. */
export const WALLS: readonly Pair[] = [
  [-12.3, 2.2],
  [-11.1, 12.7],
  [2.4, 17.6],
  [12.6, 11.3],
  [12.9, 2.6],
];
export const FRAME: readonly Pair[] = [
  [-18, 22],
  [18, 22],
  [18, -5],
  [-18, -5],
];
export const CENTRE_LINE: readonly [Pair, Pair] = [
  [0, -4],
  [0, 20],
];
export const PLASTER_LINE: readonly [Pair, Pair] = [
  [-17, 0],
  [17, 0],
];

/** Where the picture has a place of the plan, pixels right and down. */
export type Seen = (at: Pair) => Pair;

const PX_PER_FOOT = 34;

/** Straight from above: turned by five degrees, its middle moved. */
export const straight: Seen = ([x, y]) => {
  const [cos, sin] = [Math.cos(Math.PI / 36), Math.sin(Math.PI / 36)];
  const [right, up] = [x * cos - (y - 8.5) * sin, x * sin + (y - 8.5) * cos];
  return [PICTURE.width / 2 + 20 + right * PX_PER_FOOT, PICTURE.height / 2 - 15 - up * PX_PER_FOOT];
};

/** From the audience's end of the table and a little from one side: what is upstage is smaller. */
export const slanted: Seen = ([x, y]) => {
  const away = 1 + 0.012 * (y - 8.5) + 0.003 * x;
  return [PICTURE.width / 2 + (x * PX_PER_FOOT) / away, PICTURE.height / 2 - ((y - 8.5) * PX_PER_FOOT * 0.9) / away];
};

/** Where the plan is that a place of the slanted picture shows: `slanted` turned round. */
function unslanted([right, down]: Pair): Pair {
  const [across, up] = [(right - PICTURE.width / 2) / PX_PER_FOOT, (PICTURE.height / 2 - down) / (PX_PER_FOOT * 0.9)];
  const away = 1 / (1 - 0.012 * up - 0.003 * across);
  return [across * away, 8.5 + up * away];
}

/** The slanted picture straightened shows the box round all that it had, whatever its size in pixels. */
export const straightened: Seen = ([x, y]) => {
  const { width, height } = PICTURE;
  const corners = (
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ] as const
  ).map(unslanted);
  const [xs, ys] = [corners.map(([each]) => each), corners.map(([, each]) => each)];
  const [left, top] = [Math.min(...xs), Math.max(...ys)];
  return [((x - left) / (Math.max(...xs) - left)) * width, ((top - y) / (top - Math.min(...ys))) * height];
};

/** The plan as a camera has it: dark lines on paper that is lighter at one side. */
export async function photographPlan(seen: Seen): Promise<Buffer> {
  const line = (points: readonly Pair[], width: number) =>
    `<polyline points="${points.map((at) => seen(at).join(",")).join(" ")}" fill="none" stroke="#333" stroke-width="${width}"/>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${PICTURE.width}" height="${PICTURE.height}">
    <defs><linearGradient id="light"><stop offset="0" stop-color="#f4efe2"/><stop offset="1" stop-color="#b9b4a6"/></linearGradient></defs>
    <rect width="100%" height="100%" fill="url(#light)"/>
    ${line(WALLS, 5)}${line([...FRAME, FRAME[0] as Pair], 2)}${line(CENTRE_LINE, 2)}${line(PLASTER_LINE, 2)}</svg>`;
  return sharp(Buffer.from(svg)).png().toBuffer();
}

/** How long each wall truly is, metres. */
export const TRUE_LENGTHS = WALLS.slice(1).map(([x, y], i) => {
  const [fromX, fromY] = WALLS[i] as Pair;
  return Math.hypot(x - fromX, y - fromY) * FOOT_M;
});
