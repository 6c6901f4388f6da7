/** Takes the layers of a drawing that have these names off the paper, and puts back those it took off before; null puts back all. */
export type HideLayers = (names: ReadonlySet<string> | null) => void;

/**
 * Layers are groups that carry their name. What is hidden stays so until the names change: while something is dragged nothing of
 * the drawing is touched from one moment to the next. `always` are hidden along with whatever is.
 */
export function createHideLayers(drawing: () => Element | null, ...always: readonly string[]): HideLayers {
  let hidden: ReadonlySet<string> | null = null;
  return (names) => {
    if (names === hidden) return;
    for (const layer of drawing()?.querySelectorAll<SVGGElement>("[data-layer]") ?? []) {
      const name = layer.dataset.layer ?? "";
      if (names && (always.includes(name) || names.has(name))) layer.style.display = "none";
      else layer.style.removeProperty("display");
    }
    hidden = names;
  };
}
