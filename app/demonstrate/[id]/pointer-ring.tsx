"use client";

import { useEffect, useRef } from "react";

/** A large ring that follows the pointer, so that the last row sees what is pointed at. */
export function PointerRing() {
  const ring = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const follow = ({ clientX, clientY }: PointerEvent) => {
      if (!ring.current) return;
      ring.current.style.transform = `translate(${clientX}px, ${clientY}px)`;
      ring.current.dataset.seen = "";
    };
    window.addEventListener("pointermove", follow);
    window.addEventListener("pointerdown", follow);
    return () => {
      window.removeEventListener("pointermove", follow);
      window.removeEventListener("pointerdown", follow);
    };
  }, []);
  return <div ref={ring} className="pointer-ring" aria-hidden="true" />;
}
