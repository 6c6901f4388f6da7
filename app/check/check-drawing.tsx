"use client";

import { useRouter } from "next/navigation";
import { useCallback, useEffect, useMemo, useState } from "react";
import { createPost } from "@/app/_parts/hand-ins/post";
import { openWorkerDesk, startCheckWorker } from "@/app/_photo/worker-desk";
import type { Exercise } from "@/lib/exercise/exercise";
import {
  CheckContext,
  type CheckRoom,
  type Due,
  type Homework,
  type Listed,
  useCheck,
  useCheckRoom,
} from "./check-context";
import { CheckFrame } from "./check-frame";
import { createCheck } from "./check-store";
import { Choose } from "./choose/choose";
import { Confirm } from "./confirm/confirm";
import { Corners } from "./corners/corners";
import { Refused } from "./refused";
import { CheckResult } from "./result/check-result";
import { useReadPhoto } from "./use-read-photo";
import "./check.css";

export type CheckDrawingProps = {
  /** The exercise that the address names; null where it names none, or one that is not there. */
  readonly exercise: Exercise | null;
  readonly asked: string | null;
  readonly catalogue: readonly Listed[];
  readonly due: readonly Due[];
  readonly homework: Homework | null;
};

/** From a photograph of a pencil drawing to its marks. */
export function CheckDrawing(props: CheckDrawingProps) {
  const { homework, due } = props;
  const [parts] = useState(() => ({
    store: createCheck(homework),
    worker: openWorkerDesk(startCheckWorker),
    post: createPost(),
  }));
  const room = useMemo((): CheckRoom => ({ ...parts, homework, due }), [parts, homework, due]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the address names later is what the page itself asked for
  useEffect(() => parts.store.getState().open(props.asked), [parts]);
  useEffect(() => parts.post.getState().open(), [parts]);
  useEffect(() => () => parts.worker.close(), [parts]);
  return (
    <CheckContext value={room}>
      <Stages {...props} />
    </CheckContext>
  );
}

function Stages({ exercise, asked, catalogue }: CheckDrawingProps) {
  const router = useRouter();
  const { homework } = useCheckRoom();
  const opened = useCheck((check) => check.opened);
  const stage = useCheck((check) => check.stage);
  const drawing = useCheck((check) => check.drawing);
  const goTo = useCallback(
    (id: string) => router.replace(`/check?exercise=${encodeURIComponent(id)}`, { scroll: false }),
    [router],
  );
  const { readPhoto, readCorners } = useReadPhoto({ exercise, asked, goTo });

  // A drawing that was kept brings its exercise back with it.
  const wanted = stage.at === "drawing" ? (drawing?.exercise ?? null) : null;
  useEffect(() => {
    if (wanted !== null && wanted !== asked && homework === null) goTo(wanted);
  }, [wanted, asked, homework, goTo]);

  if (!opened) return <CheckFrame title="Check">{null}</CheckFrame>;
  if (stage.at === "corners")
    return (
      <Corners photo={stage.photo} exercise={exercise} catalogue={catalogue} onExercise={goTo} onSet={readCorners} />
    );
  if (stage.at === "drawing" && drawing && exercise?.id === drawing.exercise) {
    if (exercise.version !== drawing.version) return <Changed />;
    return drawing.confirmed ? (
      <CheckResult exercise={exercise} drawing={drawing} />
    ) : (
      <Confirm exercise={exercise} drawing={drawing} />
    );
  }
  if (stage.at === "drawing" && drawing && asked === drawing.exercise && !exercise) return <Changed />;
  if (stage.at === "refused") return <Refused {...stage} onFile={readPhoto} exercise={exercise} />;
  if (stage.at === "choose")
    return <Choose onFile={readPhoto} onOther={(file) => readPhoto(file, false)} exercise={exercise} />;
  return <Working words={stage.at === "working" ? stage.words : "Fetching the exercise"} />;
}

function Working({ words }: { readonly words: string }) {
  return (
    <CheckFrame title="Check">
      <div className="check-paper check-working ruled" role="status">
        <p className="lettering">{words}…</p>
        <p>Everything is done in this browser. The photograph goes to no server.</p>
      </div>
    </CheckFrame>
  );
}

/** The drawing that is kept belongs to a form of the exercise that is no more. */
function Changed() {
  const { store } = useCheckRoom();
  return (
    <Refused
      say="The exercise of the drawing that is kept here has changed, or is there no more."
      remedy="Print its sheet anew, draw on that, and take a photograph of it."
      photo={null}
      exercise={null}
      onFile={null}
      onAway={() => store.getState().startAnew()}
    />
  );
}
