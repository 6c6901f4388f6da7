"use client";

import { useEffect, useRef, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { FourPoints } from "@/app/_photo/worker/messages";
import { openWorkerDesk, startCheckWorker } from "@/app/_photo/worker-desk";
import "../bring/bring.css";
import { ChoosePicture } from "./choose-picture";
import { type OpenedPicture, openTracing, type PagesAsked, straightenTracing, type Trouble } from "./open-tracing";
import { PointAtPicture } from "./point-at-picture";
import { StraightenPicture } from "./straighten-picture";
import { useTraceStore } from "./trace-context";
import "./trace.css";

type Now =
  | { readonly at: "choosing"; readonly trouble: Trouble | null; readonly pages: PagesAsked | null }
  | { readonly at: "working"; readonly words: string }
  | { readonly at: "pointing" | "straightening"; readonly picture: OpenedPicture; readonly trouble: Trouble | null };

/** Laying a photograph under the plan: it is chosen, straightened if it was taken at a slant, and pointed at. */
export function LayUnder({ laying }: { readonly laying: "new" | "again" }) {
  const store = useTraceStore();
  const [worker] = useState(() => openWorkerDesk(startCheckWorker));
  const [now, setNow] = useState<Now>(() => startAt(laying === "again" ? store.getState().trace : null));
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => () => worker.close(), [worker]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: every part begins at its head
  useEffect(() => head.current?.focus({ preventScroll: true }), [now.at]);

  const choose = async (file: Blob, page: number | null) => {
    setNow({ at: "working", words: "Opening the picture." });
    const opened = await openTracing(worker, file, page);
    if (opened.kind === "opened") setNow({ at: "pointing", picture: opened.picture, trouble: null });
    else if (opened.kind === "pages") setNow({ at: "choosing", trouble: null, pages: { file, count: opened.count } });
    else setNow({ at: "choosing", trouble: opened, pages: null });
  };
  const straighten = async (picture: OpenedPicture, corners: FourPoints, size: readonly [number, number]) => {
    setNow({ at: "working", words: "Straightening it by your corners." });
    const straight = await straightenTracing(worker, picture, corners, size);
    setNow(
      straight.kind === "opened"
        ? { at: "pointing", picture: straight.picture, trouble: null }
        : { at: "straightening", picture, trouble: straight },
    );
  };
  const leave = () => store.getState().leave();
  return (
    <div role="dialog" aria-modal="true" aria-labelledby="trace-head" className="draft-board bring-board trace-board">
      <header className="draft-edge">
        <h1 id="trace-head" ref={head} tabIndex={-1} className="draft-title">
          {now.at === "straightening" ? "Straighten the photograph" : "Trace a photograph"}
        </h1>
        <Press weight="small" className="bring-leave" onClick={leave}>
          Leave it
        </Press>
      </header>
      {now.at === "choosing" && <ChoosePicture trouble={now.trouble} pages={now.pages} onFile={choose} />}
      {now.at === "working" && (
        <p className="trace-working" role="status">
          {now.words}
        </p>
      )}
      {now.at === "pointing" && (
        <PointAtPicture
          key={now.picture.key}
          picture={now.picture}
          worker={worker}
          onStraighten={() => setNow({ at: "straightening", picture: now.picture, trouble: null })}
        />
      )}
      {now.at === "straightening" && (
        <StraightenPicture
          picture={now.picture}
          trouble={now.trouble}
          onSet={(corners, size) => straighten(now.picture, corners, size)}
          onLeave={() => setNow({ at: "pointing", picture: now.picture, trouble: null })}
        />
      )}
    </div>
  );
}

function startAt(trace: ReturnType<ReturnType<typeof useTraceStore>["getState"]>["trace"]): Now {
  if (!trace) return { at: "choosing", trouble: null, pages: null };
  const { picture, width, height } = trace;
  return { at: "pointing", trouble: null, picture: { key: "again", picture, width, height, from: trace } };
}
