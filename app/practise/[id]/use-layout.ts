"use client";

import { type RefObject, useEffect, useState } from "react";
import { type SheetBounds, sameWidth } from "@/app/_sheet/sheet-bounds";
import { LAYOUTS, type Layout } from "@/app/_sheet/sheet-views";
import { fitPxPerMetre, type Plane, type PxSize } from "@/app/_sheet/view";

const LAYOUT_KEY = "plasterline.layout";
/** A sheet narrower than this, or higher than it is wide, has its step under the drawings. */
const WIDE_PX = 900;
/** On a sheet narrower than this the picture takes the whole width, whatever the plan's scale. */
const PHONE_PX = 600;
/** The share of a wide sheet's width that the step beside the drawings takes. */
const NOTES_SHARE = 0.29;

/** The layout that gives the picture more room on a wide sheet. */
function roomierLayout(size: PxSize, bounds: SheetBounds): Layout {
  const drawing = { width: size.width * (1 - NOTES_SHARE), height: size.height };
  const stack = sameWidth(bounds);
  const both = { ...stack.picture, top: stack.picture.top + (stack.plan.top - stack.plan.bottom) };
  return fitPxPerMetre(bounds.picture, drawing) >= fitPxPerMetre(both, drawing) ? "beside" : "stacked";
}

/** How the sheet is laid out: as the student chose, or with the most room for what is marked; narrow sheets stack. */
export function useLayout(frame: RefObject<HTMLElement | null>, bounds: SheetBounds, marked: Plane) {
  const [chosen, setChosen] = useState<Layout | null>(null);
  const [size, setSize] = useState<PxSize | null>(null);

  useEffect(() => {
    try {
      const kept = window.localStorage.getItem(LAYOUT_KEY);
      setChosen(LAYOUTS.find((each) => each === kept) ?? null);
    } catch {
      // A browser that keeps nothing starts with the roomier layout each time.
    }
  }, []);
  useEffect(() => {
    const box = frame.current;
    if (!box) return;
    const measure = () => setSize({ width: box.clientWidth, height: box.clientHeight });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(box);
    return () => watch.disconnect();
  }, [frame]);

  const narrow = size !== null && (size.width < WIDE_PX || size.height > size.width);
  // Beside each other the drawing that is marked has the larger place; a plan, being the higher, always gains by that.
  const roomier = size && marked === "picture" ? roomierLayout(size, bounds) : "beside";
  const layout: Layout = narrow ? "stacked" : (chosen ?? roomier);
  const change = (next: Layout) => {
    setChosen(next);
    try {
      window.localStorage.setItem(LAYOUT_KEY, next);
    } catch {
      // The choice holds for this page all the same.
    }
  };
  const phone = size !== null && size.width < PHONE_PX;
  return { layout, narrow, phone, change };
}
