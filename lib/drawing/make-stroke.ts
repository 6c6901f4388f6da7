import type { DrawingPoint, Lettering, Stroke } from "./display-list";

/** What may differ from a plain line; the rest is a thin, solid, exact graphite line with no fill. */
export type StrokeStyle = Partial<Omit<Stroke, "kind" | "id" | "points">>;

export function makeStroke(id: string, points: readonly DrawingPoint[], style: StrokeStyle = {}): Stroke {
  return {
    kind: "stroke",
    id,
    points,
    closed: false,
    weight: "thin",
    line: "solid",
    pencil: "graphite",
    fill: "none",
    hand: false,
    faint: false,
    ...style,
  };
}

/** Letter heights on paper, millimetres: names, notes and figures. 1/8 in for names is common practice, no source. */
export const LETTER_MM = { name: 3.2, note: 2.4, figure: 2.2, small: 1.9 } as const;

export type LetteringStyle = Partial<Omit<Lettering, "kind" | "id" | "at" | "text">>;

/** Lettering centred over `at`, unless its style says otherwise. */
export function makeLettering(id: string, at: DrawingPoint, text: string, style: LetteringStyle = {}): Lettering {
  return {
    kind: "lettering",
    id,
    at,
    text,
    heightMm: LETTER_MM.note,
    anchor: "middle",
    shiftMm: [0, 0],
    pencil: "graphite",
    faint: false,
    ...style,
  };
}
