/**
 * A display list: what to draw on one plane, in order, as data. Coordinates are metres of that plane, second
 * coordinate up (plan: [x, y]; picture: [X, Z]); line widths and letter heights are millimetres of paper. A renderer
 * scales, flips and colours it; nothing here knows a screen.
 */
export type DisplayList = readonly DisplayItem[];
export type DisplayItem = Stroke | Lettering;

/** One point of the plane the list draws on. */
export type DrawingPoint = readonly [across: number, up: number];

/** Graphite: what is given and the student's own lines. Blue: construction. Red: corrections. */
export type Pencil = "graphite" | "blue" | "red";

/** Drafting ratio 1 : 2 : 3. */
export type LineWeight = "thin" | "thick" | "extra-thick";

/** `centre` long-short, `plaster` long dashes, `hidden` short dashes, `solid` unbroken. */
export type LineType = "solid" | "centre" | "plaster" | "hidden";

/** `ink` is solid black, as of markers and codes that a camera reads. */
export type Tone = "paper" | "floor" | "wall" | "ink" | "none";

export type Stroke = {
  readonly kind: "stroke";
  /** Stable, so that the hand style can be seeded from it. */
  readonly id: string;
  readonly points: readonly DrawingPoint[];
  readonly closed: boolean;
  readonly weight: LineWeight;
  readonly line: LineType;
  readonly pencil: Pencil;
  readonly fill: Tone;
  /** True for scenery and furniture, drawn by hand; false for what must be exact. */
  readonly hand: boolean;
  /** Fainter than full strength, for the sheet's furniture (floor lines, centre line). */
  readonly faint: boolean;
  /** A tone without a line round it. */
  readonly fillOnly?: true;
};

export type Lettering = {
  readonly kind: "lettering";
  readonly id: string;
  readonly at: DrawingPoint;
  readonly text: string;
  /** Letter height on paper. */
  readonly heightMm: number;
  readonly anchor: "start" | "middle" | "end";
  /** Shift on paper from `at`, right and up. */
  readonly shiftMm: readonly [right: number, up: number];
  readonly pencil: Pencil;
  readonly faint: boolean;
  /** A thin box round it, as heights of platforms are lettered; see `letteringBox`. */
  readonly boxed?: true;
  /** The plain text face, for sentences, or its heavier cut; left out, the lettering of the drafting hand. */
  readonly face?: "plain" | "strong";
};
