"use client";

import { type RefObject, useEffect, useRef, useState } from "react";

/** The width of a box and the height of its letters, pixels. */
export type Room = { readonly width: number; readonly em: number };

/** Drawn for a laptop until the box has been measured. */
const USUAL: Room = { width: 640, em: 16 };

/** Measures a box again whenever it changes, or its letters do: charts are drawn in real pixels, so letters keep their size. */
export function useRoom<T extends HTMLElement>(): readonly [RefObject<T | null>, Room] {
  const box = useRef<T>(null);
  const [room, setRoom] = useState(USUAL);
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const letter = element.ownerDocument.documentElement;
    const measure = () => {
      const width = Math.round(element.clientWidth);
      const em = Number.parseFloat(getComputedStyle(element).fontSize);
      if (width > 0 && em > 0) setRoom((old) => (old.width === width && old.em === em ? old : { width, em }));
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(element);
    // The size of the letters is set on the whole page, which may leave the box as wide as it was.
    const looks = new MutationObserver(measure);
    looks.observe(letter, { attributes: true });
    return () => {
      watcher.disconnect();
      looks.disconnect();
    };
  }, []);
  return [box, room];
}
