"use client";

import { type RefObject, useCallback, useEffect, useRef, useState } from "react";

/** The presses go away when the pointer has rested, or has been elsewhere, this long. */
const IDLE_MS = 3000;
/** The pointer calls them back when it comes this near to the upper edge, as a share of the height. */
const NEAR_EDGE = 0.16;

/** Whether the presses are in sight: at first, while the pointer is near them, or as long as they are pinned. */
export function useControlsSeen(frame: RefObject<HTMLElement | null>) {
  const [near, setNear] = useState(true);
  const [pinned, setPinned] = useState(false);
  const clock = useRef(0);

  useEffect(() => {
    const rest = () => {
      window.clearTimeout(clock.current);
      clock.current = window.setTimeout(() => setNear(false), IDLE_MS);
    };
    const move = ({ clientY, pointerType }: PointerEvent) => {
      if (pointerType === "touch" || clientY > NEAR_EDGE * (frame.current?.clientHeight ?? 0)) return;
      setNear(true);
      rest();
    };
    rest();
    window.addEventListener("pointermove", move);
    return () => {
      window.clearTimeout(clock.current);
      window.removeEventListener("pointermove", move);
    };
  }, [frame]);
  const pin = useCallback(() => setPinned((was) => !was), []);
  return { seen: near || pinned, pinned, pin };
}
