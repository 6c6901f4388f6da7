"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { FrameAnswer } from "@/app/_photo/worker/messages";
import { useCheckRoom } from "../check-context";
import { CheckFrame } from "../check-frame";
import { sayFrame } from "./framing-words";
import { PhotoInput } from "./photo-input";
import { pressShutter } from "./press-shutter";

type Props = { readonly onFile: (file: Blob) => void; readonly onAway: () => void };

/** Between two looks at the live view, milliseconds: about three a second, less where one takes longer. */
const LOOK_MS = 330;
/** As much as the camera gives, up to twelve megapixels. */
const WISHES: MediaTrackConstraints = {
  facingMode: { ideal: "environment" },
  width: { ideal: 4096 },
  height: { ideal: 3072 },
};

type State =
  | { readonly kind: "starting" }
  | { readonly kind: "live" }
  | { readonly kind: "none"; readonly why: string };

/** The camera's live view, with words while framing, and a shutter that is pressed by itself or by hand. */
export function LiveCamera({ onFile, onAway }: Props) {
  const { worker } = useCheckRoom();
  const video = useRef<HTMLVideoElement>(null);
  const stream = useRef<MediaStream | null>(null);
  const [state, setState] = useState<State>({ kind: "starting" });
  const [words, setWords] = useState("Opening the camera…");
  const [byItself, setByItself] = useState(true);
  const pressed = useRef(false);

  useEffect(() => {
    let here = true;
    navigator.mediaDevices
      .getUserMedia({ video: WISHES, audio: false })
      .then(async (opened) => {
        if (!here || !video.current) return stopStream(opened);
        stream.current = opened;
        video.current.srcObject = opened;
        await video.current.play();
        setState({ kind: "live" });
        setWords("Hold the camera over the sheet.");
      })
      .catch((error: unknown) => setState({ kind: "none", why: whyNone(error) }));
    return () => {
      here = false;
      stopStream(stream.current);
    };
  }, []);

  const shoot = useCallback(async () => {
    if (pressed.current || !video.current || !stream.current) return;
    pressed.current = true;
    const photo = await pressShutter(video.current, stream.current);
    pressed.current = false;
    if (photo) onFile(photo);
    else setWords("The camera gave no picture. Press once more.");
  }, [onFile]);

  useEffect(() => {
    if (state.kind !== "live") return;
    let here = true;
    let before: FrameAnswer | null = null;
    const look = async () => {
      while (here) {
        const begun = performance.now();
        try {
          const frame = video.current && (await createImageBitmap(video.current));
          const answer = frame && (await worker.readFrame(frame));
          if (!here) return;
          if (answer) {
            const framing = sayFrame(answer, before);
            before = answer;
            setWords(framing.words);
            if (framing.ready && byItself) return void shoot();
          }
        } catch {
          if (here) setWords("Press the shutter when the whole sheet is in view.");
          return;
        }
        await new Promise((resolve) => setTimeout(resolve, Math.max(0, LOOK_MS - (performance.now() - begun))));
      }
    };
    void look();
    return () => {
      here = false;
    };
  }, [state, worker, byItself, shoot]);

  return (
    <CheckFrame title="Check" board>
      <div className="check-live ruled">
        {state.kind === "none" ? (
          <p className="check-live-none">{state.why}</p>
        ) : (
          <video ref={video} playsInline muted aria-label="What the camera sees" />
        )}
        <div className="check-live-foot">
          <p role="status" className="check-live-words">
            {state.kind === "none" ? "Take the photograph another way." : words}
          </p>
          <div className="check-presses">
            {state.kind === "live" && (
              <Press weight="main" onClick={() => void shoot()}>
                Take it
              </Press>
            )}
            {state.kind === "live" && (
              <Press aria-pressed={byItself} onClick={() => setByItself(!byItself)}>
                By itself
              </Press>
            )}
            {state.kind === "none" && <PhotoInput onFile={onFile} words="Take a photograph" camera />}
            <Press onClick={onAway}>Back</Press>
          </div>
        </div>
      </div>
    </CheckFrame>
  );
}

function stopStream(stream: MediaStream | null): void {
  for (const track of stream?.getTracks() ?? []) track.stop();
}

function whyNone(error: unknown): string {
  const name = error instanceof Error ? error.name : "";
  if (name === "NotAllowedError")
    return "The browser was not allowed to use the camera. You can allow it in the browser's settings of this page.";
  if (name === "NotFoundError" || name === "OverconstrainedError") return "No camera was found at this device.";
  if (name === "NotReadableError") return "Another program is using the camera.";
  return "The camera could not be opened.";
}
