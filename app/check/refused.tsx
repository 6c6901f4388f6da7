"use client";

import { useEffect, useRef } from "react";
import { Press } from "@/app/_parts/press";
import type { Exercise } from "@/lib/exercise/exercise";
import { useCheckRoom } from "./check-context";
import { CheckFrame } from "./check-frame";
import type { ShownPhoto } from "./check-store";
import { PhotoInput } from "./choose/photo-input";

type Props = {
  readonly say: string;
  readonly remedy: string;
  readonly photo: ShownPhoto | null;
  readonly exercise: Exercise | null;
  /** Null where no photograph would help. */
  readonly onFile: ((file: Blob) => void) | null;
  readonly onAway?: () => void;
};

/** What is wrong with a photograph and what to do; by hand it can often be checked all the same. */
export function Refused({ say, remedy, photo, onFile, onAway }: Props) {
  const { store } = useCheckRoom();
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  return (
    <CheckFrame title="Check">
      <div className="check-paper ruled">
        <div className="check-words">
          <h1 ref={head} tabIndex={-1} className="check-say">
            {say}
          </h1>
          <p>{remedy}</p>
          <div className="check-presses">
            {onFile && <PhotoInput onFile={onFile} words="Another photograph" />}
            {photo && (
              <Press onClick={() => store.getState().show({ at: "corners", photo })}>Set its corners by hand</Press>
            )}
            <Press onClick={onAway ?? (() => store.getState().show({ at: "choose" }))}>Back</Press>
          </div>
        </div>
        {photo && (
          <figure className="check-photo">
            {/* biome-ignore lint/performance/noImgElement: the photograph is in the browser, there is nothing to fetch */}
            <img src={photo.address} alt="The photograph" width={photo.width} height={photo.height} />
          </figure>
        )}
      </div>
    </CheckFrame>
  );
}
