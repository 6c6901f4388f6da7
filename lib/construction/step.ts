import type { PicturePoint } from "../stage/frame";

/** One step of a ruler construction; steps are numbered from 1. Picture metres. */
export type Step = MeasureStep | LineStep | MeetStep | MarkStep;

/** A true size laid off from an earlier step or a named line; puts `at` on the sheet. */
export type MeasureStep = {
  readonly do: "measure";
  readonly on: "plaster line" | "upright" | "horizon";
  readonly from: "centre line" | number;
  /** Signed: right and up are positive. */
  readonly length: number;
  readonly at: PicturePoint;
  readonly say: string;
};

/** A line through two points on the sheet, or through one of them straight up or straight across. */
export type LineStep = {
  readonly do: "line";
  readonly through: readonly [PicturePoint, PicturePoint];
  readonly toward: string;
  readonly say: string;
};

/** Where two earlier lines cross; puts `at` on the sheet. Computed from those lines' own points alone. */
export type MeetStep = {
  readonly do: "meet";
  readonly lines: readonly [number, number];
  readonly at: PicturePoint;
  readonly say: string;
};

/** Names a point that is on the sheet already. */
export type MarkStep = { readonly do: "mark"; readonly at: PicturePoint; readonly say: string };

export type Construction = {
  readonly point: string;
  readonly method: string;
  readonly steps: readonly Step[];
};

/** A construction, or why there is none: the point is behind the eye, or no crossing could be found. */
export type ConstructionResult =
  | { readonly found: true; readonly construction: Construction }
  | { readonly found: false; readonly reason: string };
