"use client";

import { useEffect, useState } from "react";
import type { Layer } from "../layers/remember";
import { pictureLayerNames } from "../picture/changed-in-picture";
import type { Answer, Asked } from "./messages";

export type SeenPicture =
  | { readonly kind: "seen"; readonly of: Asked; readonly layers: readonly Layer[] }
  /** Nothing has been worked out yet. */
  | { readonly kind: "none" }
  /** This browser works nothing out beside the page. */
  | { readonly kind: "cannot" };

/**
 * The picture as the eye sees it, of the newest plan that has been worked out. While another is asked for, the one before stays;
 * an answer about a plan that is out of date is never waited for.
 */
export function useSeenPicture(wanted: boolean, { plan, stage, viewer }: Asked): SeenPicture {
  const [seen, setSeen] = useState<SeenPicture>({ kind: "none" });
  useEffect(() => {
    if (!wanted) return;
    if (typeof Worker === "undefined") {
      setSeen({ kind: "cannot" });
      return;
    }
    const asked: Asked = { plan, stage, viewer };
    const worker = new Worker(new URL("./seen-worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      setSeen({ kind: "seen", of: asked, layers: layersOf(asked, data) });
      worker.terminate();
    };
    worker.onerror = () => setSeen({ kind: "cannot" });
    worker.postMessage(asked);
    return () => worker.terminate();
  }, [wanted, plan, stage, viewer]);
  return seen;
}

function layersOf({ plan }: Asked, things: Answer): readonly Layer[] {
  const names = pictureLayerNames(plan);
  return things.map(({ element, strokes }) => ({ key: names.get(element) ?? element, list: strokes }));
}
