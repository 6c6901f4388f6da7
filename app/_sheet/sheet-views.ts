import { createStore, type StoreApi } from "zustand/vanilla";
import { newPane, type PaneState, panPane, wholePane, zoomPane } from "./pane-state";
import { type Bounds, fitPxPerMetre, middle, type Plane, type PxPoint, type PxSize } from "./view";

/** Picture over plan, or side by side. */
export const LAYOUTS = ["stacked", "beside"] as const;
export type Layout = (typeof LAYOUTS)[number];

/** Whether the two drawings are to share one centre line and one scale: also where the picture must shrink for it, or not. */
export type Link = "always" | "if-room" | "never";

export type SheetViews = {
  readonly link: Link;
  /** The two drawings share one centre line and one scale, however far one has gone in. */
  readonly linked: boolean;
  readonly picture: PaneState<"picture">;
  readonly plan: PaneState<"plan">;
  readonly resize: (plane: Plane, size: PxSize) => void;
  readonly zoom: (plane: Plane, by: number, about?: PxPoint) => void;
  readonly pan: (plane: Plane, right: number, down: number) => void;
  readonly whole: (plane: Plane) => void;
  readonly lay: (link: Link, picture: Bounds, plan: Bounds) => void;
};

/** The picture may shrink by this much to share the plan's scale. */
const ROOM_ENOUGH = 0.93;

type Panes = Pick<SheetViews, "link" | "linked" | "picture" | "plan">;

/** The store of what the two panes show. It lives outside React's rendering, so that zooming re-renders no drawing. */
export function createSheetViews(picture: Bounds, plan: Bounds): StoreApi<SheetViews> {
  return createStore<SheetViews>((set) => ({
    link: "never",
    linked: false,
    picture: newPane("picture", picture),
    plan: newPane("plan", plan),
    resize: (plane, size) => set((panes) => relink(withPane(panes, plane, (pane) => ({ ...pane, size })))),
    zoom: (plane, by, about) =>
      set((panes) =>
        follow(
          withPane(panes, plane, (pane) => zoomPane(pane, by, about ?? [pane.size.width / 2, pane.size.height / 2])),
          plane,
        ),
      ),
    pan: (plane, right, down) =>
      set((panes) =>
        follow(
          withPane(panes, plane, (pane) => panPane(pane, right, down)),
          plane,
        ),
      ),
    whole: (plane) => set((panes) => follow(withPane(panes, plane, wholePane), plane)),
    lay: (link, pictureBounds, planBounds) =>
      set((panes) =>
        relink({
          ...panes,
          link,
          picture: rebound(panes.picture, pictureBounds),
          plan: rebound(panes.plan, planBounds),
        }),
      ),
  }));
}

function withPane(panes: Panes, plane: Plane, change: <P extends Plane>(pane: PaneState<P>) => PaneState<P>): Panes {
  return plane === "picture" ? { ...panes, picture: change(panes.picture) } : { ...panes, plan: change(panes.plan) };
}

function rebound<P extends Plane>(pane: PaneState<P>, bounds: Bounds): PaneState<P> {
  return { ...pane, bounds, factor: 1, centre: middle(bounds) };
}

/** One size of a metre for both panes when they are linked; each its own otherwise. */
function relink(panes: Panes): Panes {
  const { link, picture, plan } = panes;
  const laidOut = [picture, plan].every((pane) => pane.size.width > 0 && pane.size.height > 0);
  const [pictureFit, planFit] = [fitPxPerMetre(picture.bounds, picture.size), fitPxPerMetre(plan.bounds, plan.size)];
  const linked = laidOut && (link === "always" || (link === "if-room" && planFit >= pictureFit * ROOM_ENOUGH));
  const shared = linked ? Math.min(pictureFit, planFit) : null;
  return {
    ...panes,
    linked,
    picture: { ...picture, wholePxPerMetre: shared },
    plan: { ...plan, wholePxPerMetre: shared },
  };
}

/** The other pane keeps the same magnification and the same place across, its own place up. */
function follow(panes: Panes, led: Plane): Panes {
  if (!panes.linked) return panes;
  const leader = panes[led];
  const other = led === "picture" ? panes.plan : panes.picture;
  const across = leader.factor === 1 ? middle(other.bounds)[0] : leader.centre[0];
  const up = leader.factor === 1 ? middle(other.bounds)[1] : other.centre[1];
  const followed = { factor: leader.factor, centre: [across, up] as const };
  return led === "picture"
    ? { ...panes, plan: { ...panes.plan, ...followed } }
    : { ...panes, picture: { ...panes.picture, ...followed } };
}
