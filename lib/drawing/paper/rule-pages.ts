import type { DisplayItem } from "../display-list";
import type { PaperPage } from "./paper-page";

/** How the lines of scenery and furniture are drawn. */
export const LINE_HANDS = ["hand", "ruled"] as const;
export type LineHand = (typeof LINE_HANDS)[number];

/** The same pages with every line ruled: nothing is drawn by hand any more. */
export function rulePages(pages: readonly PaperPage[]): readonly PaperPage[] {
  const ruled = (item: DisplayItem): DisplayItem => (item.kind === "stroke" ? { ...item, hand: false } : item);
  return pages.map((page) => ({
    ...page,
    layers: page.layers.map((layer) => ({ ...layer, list: layer.list.map(ruled) })),
  }));
}
