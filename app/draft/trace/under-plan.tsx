"use client";

import { memo, useEffect, useState } from "react";
import { useSheet } from "@/app/_sheet/sheet-context";
import { chainAffine } from "@/lib/draft/bring/affine";
import { useTrace } from "./trace-context";
import "./trace.css";

/**
 * The photograph's lines under all that is drawn, in the drawing's own still layer: what moves is painted on another, so this is
 * painted when the paper is pushed or looked at nearer, and not while something is dragged.
 */
export const UnderPlan = memo(function UnderPlan() {
  const { scaleRatio } = useSheet();
  const trace = useTrace((desk) => desk.trace);
  const address = useAddress(trace?.lines ?? null);
  if (!trace?.shown || !address) return null;
  const mm = 1000 / scaleRatio;
  const matrix = chainAffine([mm, 0, 0, -mm, 0, 0], trace.toPlan);
  return (
    <image
      href={address}
      width={trace.width}
      height={trace.height}
      preserveAspectRatio="none"
      transform={`matrix(${matrix.join(" ")})`}
      opacity={trace.strength / 100}
      className="trace-under"
    />
  );
});

/** An address for a picture as long as it is shown. */
export function useAddress(picture: Blob | null): string | null {
  const [address, setAddress] = useState<{ readonly of: Blob; readonly url: string } | null>(null);
  useEffect(() => {
    if (!picture) return;
    const url = URL.createObjectURL(picture);
    setAddress({ of: picture, url });
    return () => URL.revokeObjectURL(url);
  }, [picture]);
  return address && address.of === picture ? address.url : null;
}
