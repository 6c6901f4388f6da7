"use client";

import Link from "next/link";
import { useState } from "react";
import { Press, PressLink } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import type { Exercise } from "@/lib/exercise/exercise";
import { useCheck, useCheckRoom } from "../check-context";
import { CheckFrame } from "../check-frame";
import { LiveCamera } from "./live-camera";
import { PhotoInput } from "./photo-input";
import { useDevice, useDrop, usePaste } from "./take-file";

type Props = {
  readonly onFile: (file: Blob) => void;
  /** A photograph of a drawing on other paper. */
  readonly onOther: (file: Blob) => void;
  readonly exercise: Exercise | null;
};

/** The start: a photograph is taken, chosen, dropped or pasted. */
export function Choose({ onFile, onOther, exercise }: Props) {
  const { homework, store } = useCheckRoom();
  const keeping = useCheck((check) => check.keeping);
  const kept = useCheck((check) => check.drawing);
  const drop = useDrop(onFile);
  const [live, setLive] = useState(false);
  const device = useDevice();
  usePaste(onFile);

  if (live) return <LiveCamera onFile={onFile} onAway={() => setLive(false)} />;
  return (
    <CheckFrame title="Check">
      <section className="check-paper check-choose ruled" aria-label="A photograph" {...drop}>
        <div className="check-words">
          <h1 className="lettering">Check a pencil drawing</h1>
          {homework ? (
            <p>
              For “{homework.title}”: {exercise?.title}.{" "}
              {homework.dueAt && (
                <>
                  Due <When at={homework.dueAt} />.
                </>
              )}
            </p>
          ) : (
            <p>
              Draw on the printed sheet, take a photograph of it, and have it marked as on screen: each corner, the
              habit behind an error, and the truth in red over your pencil.
            </p>
          )}
          <div className="check-presses">
            {device?.canLive && (
              <Press weight="main" onClick={() => setLive(true)}>
                Open the camera
              </Press>
            )}
            {device?.isHandheld && !device.canLive && <PhotoInput onFile={onFile} words="Take a photograph" camera />}
            <PhotoInput
              onFile={onFile}
              words="Choose a photograph"
              weight={device?.canLive || device?.isHandheld ? "plain" : "main"}
            />
          </div>
          {device && !device.isHandheld && (
            <p className="check-quiet">Or drop one anywhere on this paper, or paste it.</p>
          )}
          {kept && (
            <div className="check-presses">
              <Press onClick={() => store.getState().show({ at: "drawing" })}>Go on with the last drawing</Press>
            </div>
          )}
          {!keeping && (
            <p className="check-quiet">This browser keeps nothing: what you confirm is gone when the page is left.</p>
          )}
        </div>
        <div className="check-advice">
          <h2 className="lettering">A good photograph</h2>
          <ul>
            <li>The paper lies flat, and light falls on it evenly: no shadow of your hand or phone.</li>
            <li>All eight square marks along the edge of the sheet are in view; at least four must be.</li>
            <li>Hold the camera over the middle, as straight down as you can, and near: the sheet fills the view.</li>
          </ul>
          <p>
            It is read in this browser and goes to no server. What the camera noted beside it, such as the place, is
            never read and never kept.
          </p>
          <h2 className="lettering">No printed sheet?</h2>
          <p>
            Any drawing in a proscenium opening will do: say which exercise it is, and set the four corners of its
            opening by hand.
          </p>
          <div className="check-presses">
            <PhotoInput onFile={onOther} words="A drawing on other paper" weight="plain" />
            {exercise && !homework && <PressLink href={`/sheet/${exercise.id}`}>Print the sheet</PressLink>}
          </div>
          {!homework && (
            <p>
              <Link href="/check/eye" className="plain-link" prefetch={false}>
                Any drawing: whose eye drew it?
              </Link>
            </p>
          )}
        </div>
      </section>
    </CheckFrame>
  );
}
