"use client";

import { type RefObject, useEffect, useLayoutEffect, useMemo, useState } from "react";
import { useStore } from "zustand";
import { useSheet } from "@/app/_sheet/sheet-context";
import { LAYOUTS, type Layout } from "@/app/_sheet/sheet-views";
import type { Bounds, PxSize } from "@/app/_sheet/view";
import type { PlaneBox } from "@/lib/drawing/clear-lettering";
import { DEMONSTRATION_MARGINS, demonstrationBoxes } from "@/lib/drawing/demonstration/demonstration-boxes";
import { type Fitted, fitDrawing } from "@/lib/drawing/demonstration/fit-drawing";
import { useRoom } from "./demonstration-context";
import { isNarrow, letterUnitPx, sentencePx } from "./sizes";

const LAYOUT_KEY = "plasterline.demonstrate.layout";
/** The screen that is laid out for before any is known. */
const ASSUMED: PxSize = { width: 1920, height: 1080 };
const ASSUMED_PANE: PxSize = { width: 960, height: 800 };

const useBrowserLayoutEffect = typeof window === "undefined" ? useEffect : useLayoutEffect;

/** How the screen is laid out: plan and picture one above the other or side by side, as was chosen last, and how large everything is. */
export function useDemonstrationLayout(frame: RefObject<HTMLElement | null>) {
  const { exercise, steps } = useRoom();
  const { views } = useSheet();
  const [chosen, setChosen] = useState<Layout>("beside");
  const [size, setSize] = useState<PxSize>(ASSUMED);
  const pictureSize = useStore(views, ({ picture }) => picture.size);
  const planSize = useStore(views, ({ plan }) => plan.size);
  const boxes = useMemo(() => demonstrationBoxes(exercise, steps), [exercise, steps]);

  useEffect(() => {
    try {
      const kept = window.localStorage.getItem(LAYOUT_KEY);
      setChosen(LAYOUTS.find((each) => each === kept) ?? "beside");
    } catch {
      // A browser that keeps nothing starts side by side each time.
    }
  }, []);
  useBrowserLayoutEffect(() => {
    const box = frame.current;
    if (!box) return;
    const measure = () => setSize({ width: box.clientWidth, height: box.clientHeight });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(box);
    return () => watch.disconnect();
  }, [frame]);

  const narrow = isNarrow(size);
  const layout: Layout = narrow ? "stacked" : chosen;
  const letterUnit = letterUnitPx(size.width);
  const fitted = useMemo(() => {
    const layInto = (box: PlaneBox, plane: "picture" | "plan", pane: PxSize, mostPerMetre?: number) =>
      fitDrawing(box, DEMONSTRATION_MARGINS[plane], {
        ...(pane.width > 0 ? pane : ASSUMED_PANE),
        letterUnit,
        ...(mostPerMetre === undefined ? {} : { mostPerMetre }),
      });
    const picture = layInto(boxes.picture, "picture", pictureSize);
    const plan = layInto(boxes.plan, "plan", planSize);
    if (layout === "beside" || narrow) return { picture, plan };
    // One above the other they share one scale and one centre line, so that an offset can be carried straight up.
    const shared = Math.min(picture.perMetre, plan.perMetre);
    return {
      picture: layInto(boxes.picture, "picture", pictureSize, shared),
      plan: layInto(boxes.plan, "plan", planSize, shared),
    };
  }, [boxes, letterUnit, layout, narrow, pictureSize, planSize]);

  useBrowserLayoutEffect(() => {
    const link = layout === "stacked" && !narrow ? "always" : "never";
    views.getState().lay(link, boundsOf(fitted.picture), boundsOf(fitted.plan));
  }, [views, fitted, layout, narrow]);

  const change = (next: Layout) => {
    setChosen(next);
    try {
      window.localStorage.setItem(LAYOUT_KEY, next);
    } catch {
      // The choice holds for this page all the same.
    }
  };
  const shape = ([left, bottom, right, top]: PlaneBox) => (right - left) / (top - bottom);
  return {
    layout,
    narrow,
    change,
    fitted,
    sentencePx: sentencePx(size.width),
    shapes: { picture: shape(boxes.picture), plan: shape(boxes.plan) },
  };
}

function boundsOf({ window: [left, bottom, right, top] }: Fitted): Bounds {
  return { left, bottom, right, top };
}
