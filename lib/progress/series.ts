/** One finished exercise in a chart. */
export type SeriesPoint = {
  /** Number of the attempt, from 1, the same in every series. */
  readonly x: number;
  readonly y: number;
  readonly exercise: string;
  /** ISO 8601. */
  readonly when: string;
  /** Marks behind it. */
  readonly marks: number;
};

export type End = { readonly x: number; readonly y: number };

/** A chart's data: draw `y` over `x`, on a logarithmic axis where `scale` says so, and the trend as the curve between its ends. */
export type Series = {
  readonly id: "depth" | "across" | "height" | "ratio";
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly unit: "mm" | "ratio";
  readonly scale: "linear" | "log";
  /** The value of no error. */
  readonly ideal: number;
  readonly points: readonly SeriesPoint[];
  /** A straight line on the chart's own scale; null with too few points. */
  readonly trend: { readonly from: End; readonly to: End } | null;
  readonly words: string;
};
