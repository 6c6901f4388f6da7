import { scaleLinear, scaleLog } from "d3-scale";

export type Tick = { readonly at: number; readonly words: string };

export type Axis = {
  /** Where a value lies, in pixels; one past the axis' ends is held at the end. */
  readonly at: (value: number) => number;
  /** The same for lines, which run on past the ends. */
  readonly onward: (value: number) => number;
  readonly holds: (value: number) => boolean;
  readonly ticks: readonly Tick[];
};

/** Ends in pixels, the lower value's first, and the room that a tick's words take. */
export type Extent = { readonly from: number; readonly to: number; readonly room: number };

/** A chart shows the last attempts, at most so many: as many as a trend looks back. */
export const MOST_SHOWN = 60;

/** An error so many times the size of nearly all others would squeeze them flat: it is shown at the edge, with its number. */
const FAR_OFF = 4;
const NEARLY_ALL = 0.9;

/** The edge then lies at so many times the size of nearly all others. */
const EDGE = 2;

/** With fewer values than these none is out of the ordinary. */
const FEW = 5;

/** Of the attempts' numbers; more than `MOST_SHOWN` are never asked for. */
const STEPS = [1, 2, 5, 10, 20, 50];

const LEAST_SIZE_MM = 2;

/** Ratios are shown at least so far either way of 1, and at most. */
const LEAST_RATIO = 1.3;
const MOST_RATIO = 4;
const MARGIN = 1.05;

/** In the order of their worth: where there is no room, the later ones go. */
const RATIO_TICKS = [1, 2, 1 / 2, 4, 1 / 4, 3 / 2, 2 / 3, 3, 1 / 3, 5 / 4, 4 / 5, 11 / 10, 10 / 11];

/** The attempts' numbers, whole ones, from the first shown to the last. */
export function attemptAxis(first: number, last: number, { from, to, room }: Extent): Axis {
  const scale = scaleLinear([first - 0.5, last + 0.5], [from, to]);
  const whole = wholeTicks(first, last, Math.abs(scale(1) - scale(0)), room);
  return {
    at: scale,
    onward: scale,
    holds: (value) => value >= first && value <= last,
    ticks: whole.map((value) => ({ at: scale(value), words: String(value) })),
  };
}

/** Whole numbers between two, in steps of 1, 2, 5, 10 and so on, so far apart that their words have room. */
function wholeTicks(first: number, last: number, apart: number, room: number): readonly number[] {
  const step = STEPS.find((each) => each * apart >= room) ?? last;
  const from = Math.ceil(first / step);
  return Array.from({ length: Math.floor(last / step) - from + 1 }, (_, i) => (from + i) * step);
}

/** Sizes of errors, millimetres, from none up. */
export function sizeAxis(values: readonly number[], { from, to, room }: Extent): Axis {
  const count = Math.max(2, Math.floor(Math.abs(to - from) / room));
  const scale = scaleLinear([0, Math.max(LEAST_SIZE_MM, reachOf(values))], [from, to])
    .nice(count)
    .clamp(true);
  const end = scale.domain()[1] ?? 0;
  const print = scale.tickFormat(count);
  return {
    at: scale,
    onward: scale.copy().clamp(false),
    holds: (value) => value <= end,
    ticks: scale.ticks(count).map((value) => ({ at: scale(value), words: print(value) })),
  };
}

/** Ratios on a logarithmic axis with 1 in its middle: half and double lie equally far from it. */
export function ratioAxis(values: readonly number[], { from, to, room }: Extent): Axis {
  const reach = reachOf(values.map((value) => Math.abs(Math.log(value))));
  const end = Math.min(MOST_RATIO, Math.max(LEAST_RATIO, Math.exp(reach) * MARGIN));
  const scale = scaleLog([1 / end, end], [from, to]).clamp(true);
  const holds = (value: number) => value <= end && value >= 1 / end;
  const ticks: Tick[] = [];
  for (const value of RATIO_TICKS.filter(holds)) {
    const at = scale(value);
    if (ticks.every((tick) => Math.abs(tick.at - at) >= room)) ticks.push({ at, words: sayRatio(value) });
  }
  return { at: scale, onward: scale.copy().clamp(false), holds, ticks };
}

/** How far an axis goes: to the largest size, or past nearly all of them where the largest is out of the ordinary. */
function reachOf(sizes: readonly number[]): number {
  const sorted = [...sizes].sort((a, b) => a - b);
  const most = sorted.at(-1) ?? 0;
  const usual = sorted[Math.floor(NEARLY_ALL * (sorted.length - 1))] ?? 0;
  return sorted.length >= FEW && usual > 0 && most > FAR_OFF * usual ? EDGE * usual : most;
}

function sayRatio(value: number): string {
  return String(Number(value.toFixed(2)));
}
