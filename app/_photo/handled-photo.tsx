"use client";

import { type ReactNode, type SVGProps, useState } from "react";
import { Press } from "@/app/_parts/press";
import { Magnifier } from "@/app/_sheet/magnifier";
import type { Bounds, Plane } from "@/app/_sheet/view";
import { ZoomPresses } from "@/app/_sheet/zoom-presses";
import { PHOTO_ID, PhotoPane } from "./photo-pane";
import type { useHandles } from "./use-handles";

type Props = {
  readonly plane: Plane;
  /** What the photograph shows and how its handles are moved, for readers of the screen. */
  readonly label: string;
  readonly address: string;
  readonly bounds: Bounds;
  readonly handles: ReturnType<typeof useHandles>;
  /** Handlers in place of the handles' own. */
  readonly svg?: Pick<SVGProps<SVGSVGElement>, "onPointerDown" | "onPointerUp">;
  /** Where the handle on hand stands. */
  readonly onHand: () => readonly [number, number] | null;
  /** Told whenever a handle has moved. */
  readonly watch: (listener: () => void) => () => void;
  readonly caption: ReactNode;
  /** The handles, and what is drawn between them. */
  readonly live: ReactNode;
  /** Presses of this board alone. */
  readonly tools?: ReactNode;
};

/** A photograph whose handles are dragged: the magnifier comes with a finger, or stays out when it is asked for. */
export function HandledPhoto(props: Props) {
  const { plane, label, address, bounds, handles, svg, onHand, watch, caption, live, tools } = props;
  const [magnified, setMagnified] = useState(false);
  const finger = handles.pointing?.down === true && handles.pointing.device !== "mouse";
  return (
    <div className="check-picture">
      <PhotoPane
        plane={plane}
        label={label}
        address={address}
        bounds={bounds}
        keys={handles.onKeyDown}
        about={onHand}
        onSecondFinger={handles.letGo}
        {...handles.svg}
        {...svg}
        live={live}
        over={magnified || finger ? <Magnifier plane={plane} drawingId={PHOTO_ID} mark={onHand} watch={watch} /> : null}
      />
      <div className="check-tools">
        <p className="check-drawn">
          <span className="lettering">{caption}</span>
        </p>
        <Press weight="small" aria-pressed={magnified} onClick={() => setMagnified(!magnified)}>
          Magnifier
        </Press>
        {tools}
        <ZoomPresses plane={plane} about={onHand} />
      </div>
    </div>
  );
}
