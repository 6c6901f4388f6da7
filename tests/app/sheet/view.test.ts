import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { newPane, panPane, viewOfPane, wholePane, zoomPane } from "@/app/_sheet/pane-state";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import { fromPx, type PxPoint, toPx, type View } from "@/app/_sheet/view";
import type { PicturePoint } from "@/lib/stage/frame";

const BOUNDS = { left: -6, right: 6, bottom: -1, top: 7 };
const metres = fc.double({ min: -20, max: 20, noNaN: true });
const pixels = fc.double({ min: 0, max: 1000, noNaN: true });

describe("a view", () => {
  it("turns up the sheet into up the screen", () => {
    const view: View<"picture"> = { plane: "picture", origin: [100, 200], pxPerMetre: 50 };
    expect(toPx(view, [1, 2])).toEqual([150, 100]);
  });

  it("comes back from pixels to the same place", () => {
    fc.assert(
      fc.property(metres, metres, fc.double({ min: 1, max: 500, noNaN: true }), pixels, pixels, (X, Z, k, ox, oy) => {
        const view: View<"picture"> = { plane: "picture", origin: [ox, oy], pxPerMetre: k };
        const back = fromPx(view, toPx(view, [X, Z] as PicturePoint));
        expect(back[0]).toBeCloseTo(X, 8);
        expect(back[1]).toBeCloseTo(Z, 8);
      }),
    );
  });
});

describe("a pane", () => {
  const pane = { ...newPane("picture", BOUNDS), size: { width: 600, height: 400 } };

  it("shows the whole of its bounds", () => {
    const view = viewOfPane(pane);
    const [left, top] = toPx(view, [BOUNDS.left, BOUNDS.top]);
    const [right, bottom] = toPx(view, [BOUNDS.right, BOUNDS.bottom]);
    expect(left).toBeGreaterThanOrEqual(-1e-9);
    expect(top).toBeGreaterThanOrEqual(-1e-9);
    expect(right).toBeLessThanOrEqual(600 + 1e-9);
    expect(bottom).toBeLessThanOrEqual(400 + 1e-9);
  });

  it("keeps what lies under the pointer where it is", () => {
    const about: PxPoint = [320, 180];
    const before = fromPx(viewOfPane(pane), about);
    const after = fromPx(viewOfPane(zoomPane(pane, 2.5, about)), about);
    expect(after[0]).toBeCloseTo(before[0], 9);
    expect(after[1]).toBeCloseTo(before[1], 9);
  });

  it("cannot be pushed off its drawing, and goes back to the whole", () => {
    const far = panPane(zoomPane(pane, 4, [300, 200]), 1e6, 1e6);
    expect(far.centre[0]).toBe(BOUNDS.left);
    expect(far.centre[1]).toBe(BOUNDS.top);
    expect(wholePane(far)).toEqual(pane);
  });
});

describe("two panes", () => {
  it("share centre line and scale when they are linked, through zoom and pan", () => {
    const views = createSheetViews(BOUNDS, BOUNDS);
    const { lay, resize, zoom, pan } = views.getState();
    resize("picture", { width: 600, height: 300 });
    resize("plan", { width: 600, height: 500 });
    lay("always", BOUNDS, BOUNDS);
    zoom("picture", 3, [200, 100]);
    pan("picture", 25, 0);
    const { picture, plan } = views.getState();
    expect(viewOfPane(plan).pxPerMetre).toBeCloseTo(viewOfPane(picture).pxPerMetre, 9);
    expect(viewOfPane(plan).origin[0]).toBeCloseTo(viewOfPane(picture).origin[0], 9);
  });

  it("do not shrink the picture for the plan's sake where there is no room", () => {
    const views = createSheetViews(BOUNDS, BOUNDS);
    views.getState().resize("picture", { width: 600, height: 400 });
    views.getState().resize("plan", { width: 600, height: 100 });
    views.getState().lay("if-room", BOUNDS, BOUNDS);
    expect(views.getState().linked).toBe(false);
    views.getState().resize("plan", { width: 600, height: 420 });
    expect(views.getState().linked).toBe(true);
  });
});
