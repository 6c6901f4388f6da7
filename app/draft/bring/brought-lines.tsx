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
          <Paths paths={lamp.paths} className="stroke" />
        </g>
      )}
      {layers.map(({ name, paths }, i) =>
        isShown(i) || name === lit ? (
          <g key={name} data-layer={name}>
            <Paths paths={paths} className="stroke w-thin" />
          </g>
        ) : null,
      )}
    </>
  );
});

function Paths({ paths, className }: { readonly paths: readonly string[]; readonly className: string }) {
  return paths.map((path) => <path key={path.slice(0, KEY_LETTERS)} d={path} className={className} />);
}

/** A path is told from the others of its layer by where it begins. */
const KEY_LETTERS = 60;
