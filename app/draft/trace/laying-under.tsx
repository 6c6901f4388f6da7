"use client";

import { lazy, Suspense, useEffect, useRef } from "react";
import { useTrace } from "./trace-context";

const LayUnder = lazy(async () => ({ default: (await import("./lay-under")).LayUnder }));

/** Over the desk while a photograph is being laid; what that takes is fetched only then. */
export function LayingUnder() {
  const laying = useTrace((desk) => desk.laying);
  const wasLaying = useRef(false);
  useEffect(() => {
    // What was pressed to come here may be gone: the keys go on with the plan.
    if (wasLaying.current && !laying)
      document.querySelector<HTMLElement>(".draft-plan .draft-keys")?.focus({ preventScroll: true });
    wasLaying.current = laying !== null;
  }, [laying]);
  if (!laying) return null;
  return (
    <Suspense fallback={<p className="aloud">Getting ready to lay a photograph under the plan.</p>}>
      <LayUnder key={laying} laying={laying} />
    </Suspense>
  );
}
