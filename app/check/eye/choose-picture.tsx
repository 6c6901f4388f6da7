"use client";

import Link from "next/link";
import { CheckFrame } from "../check-frame";
import { PhotoInput } from "../choose/photo-input";
import { useDevice, useDrop, usePaste } from "../choose/take-file";

/** The start: any picture of a drawing is taken, chosen, dropped or pasted. */
export function ChoosePicture({ onFile }: { readonly onFile: (file: Blob) => void }) {
  const device = useDevice();
  const drop = useDrop(onFile);
  usePaste(onFile);
  return (
    <CheckFrame title="Check">
      <section className="check-paper check-choose ruled" aria-label="A picture of a drawing" {...drop}>
        <div className="check-words">
          <h1 className="lettering">Whose eye drew this?</h1>
          <p>
            Any drawing in perspective was seen by one eye, at one height and one distance. Mark a few of its lines, and
            see how much of that eye they tell.
          </p>
          <div className="check-presses">
            {device?.isHandheld && <PhotoInput onFile={onFile} words="Take a photograph" camera />}
            <PhotoInput onFile={onFile} words="Choose a picture" weight={device?.isHandheld ? "plain" : "main"} />
          </div>
          {device && !device.isHandheld && (
            <p className="check-quiet">Or drop one anywhere on this paper, or paste it.</p>
          )}
          <p>
            <Link href="/check" className="plain-link" prefetch={false}>
              Have an exercise's drawing marked instead
            </Link>
          </p>
        </div>
        <div className="check-advice">
          <h2 className="lettering">What can be marked</h2>
          <ul>
            <li>Lines that run the same way on the set: where they meet lies on the horizon.</li>
            <li>A rectangle on the floor, and its proportion if you know it: then the eye's distance follows too.</li>
            <li>One length that you know: it gives the drawing a scale, and the eye its height.</li>
          </ul>
          <p>
            A photograph taken straight on is best. One taken aslant can be straightened by the four corners of a
            rectangle on its paper.
          </p>
          <p>The picture is opened in this browser, goes to no server, and is kept here with its marks.</p>
        </div>
      </section>
    </CheckFrame>
  );
}
