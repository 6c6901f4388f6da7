"use client";

import { memo } from "react";
import type { ShownLayer } from "./worker/messages";

type Props = {
  readonly layers: readonly ShownLayer[];
  readonly isShown: (layer: number) => boolean;
  readonly lit: string | null;
};

/** The lines of the drawing by layer; the one that is lit lies on a broad soft stroke, hidden in its file or not. */
export const BroughtLines = memo(function BroughtLines({ layers, isShown, lit }: Props) {
  const lamp = layers.find(({ name }) => name === lit);
  return (
    <>
      {lamp && (
        <g className="draft-chosen">
          <path d={lamp.path} className="stroke" />
        </g>
      )}
      {layers.map(({ name, path }, i) =>
        isShown(i) || name === lit ? (
          <path key={name} d={path} className="stroke w-thin bring-layer-lines" data-layer={name} />
        ) : null,
      )}
    </>
  );
});
