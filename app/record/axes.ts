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
const FAR_OFF = 3;
const NEARLY_ALL = 0.9;

/** With fewer values than these none is out of the ordinary. */
const FEW = 5;

const LEAST_SIZE_MM = 2;

/** Ratios are shown at least so far either way of 1, and at most. */
const LEAST_RATIO = 1.3;
const MOST_RATIO = 4;

/** In the order of their worth: where there is no room, the later ones go. */
const RATIO_TICKS = [1, 2, 1 / 2, 4, 1 / 4, 3 / 2, 2 / 3, 3, 1 / 3, 5 / 4, 4 / 5, 11 / 10, 10 / 11];

/** The attempts' numbers, whole ones, from the first shown to the last. */
export function attemptAxis(first: number, last: number, { from, to, room }: Extent): Axis {
  const scale = scaleLinear([first - 0.5, last + 0.5], [from, to]);
  const count = Math.max(1, Math.floor((to - from) / room));
  const whole = scale.ticks(count).filter((value) => Number.isInteger(value) && value >= first && value <= last);
  return {
    at: scale,
    onward: scale,
    holds: (value) => value >= first && value <= last,
    ticks: whole.map((value) => ({ at: scale(value), words: String(value) })),
  };
}

/** Sizes of errors, millimetres, from none up. */
export function sizeAxis(values: readonly number[], { from, to, room }: Extent): Axis {
  const sorted = [...values].sort((a, b) => a - b);
  const most = sorted.at(-1) ?? 0;
  const usual = sorted[Math.floor(NEARLY_ALL * (sorted.length - 1))] ?? 0;
  const top = sorted.length >= FEW && most > FAR_OFF * usual && usual > 0 ? FAR_OFF * usual : most;
  const count = Math.max(2, Math.floor(Math.abs(to - from) / room));
  const scale = scaleLinear([0, Math.max(LEAST_SIZE_MM, top)], [from, to])
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
  const reach = Math.max(...values.map((value) => Math.abs(Math.log(value))), Math.log(LEAST_RATIO));
  const end = Math.min(MOST_RATIO, Math.exp(reach) * 1.05);
  const scale = scaleLog([1 / end, end], [from, to]).clamp(true);
  const holds = (value: number) => value <= end && value >= 1 / end;
  const ticks: Tick[] = [];
  for (const value of RATIO_TICKS.filter(holds)) {
    const at = scale(value);
    if (ticks.every((tick) => Math.abs(tick.at - at) >= room)) ticks.push({ at, words: sayRatio(value) });
  }
  return { at: scale, onward: scale.copy().clamp(false), holds, ticks };
}

function sayRatio(value: number): string {
  return String(Number(value.toFixed(2)));
}
