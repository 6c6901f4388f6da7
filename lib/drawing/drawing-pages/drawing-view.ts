/** What a page of one exercise may show: a drawing alone, the ruler's lines, or picture over plan on one centre line. */
export const DRAWING_VIEWS = ["plan", "picture", "construction", "both"] as const;
export type DrawingView = (typeof DRAWING_VIEWS)[number];
