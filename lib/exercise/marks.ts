import type { PicturePoint, PlanPoint } from "../stage/frame";

export const POINTING_DEVICES = ["mouse", "touch", "pen", "keys", "paper"] as const;
export type PointingDevice = (typeof POINTING_DEVICES)[number];

/** One mark: [X, Z] on the picture plane, or [x, y] on the plan for `picture-to-plan`; metres. */
export type Mark = {
  readonly point: string;
  readonly at: PicturePoint | PlanPoint;
  readonly with?: PointingDevice;
};

/** A student's marks for one exercise. */
export type MarkSet = {
  readonly format: "plasterline.marks/1";
  readonly exercise: string;
  readonly version?: number;
  /** The scale it was drawn at, when not the exercise's own. */
  readonly scale?: string;
  readonly marks: readonly Mark[];
  /** Hints taken, by point. */
  readonly hints?: Readonly<Record<string, number>>;
};
