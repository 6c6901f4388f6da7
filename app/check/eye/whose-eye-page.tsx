"use client";

import { useEffect, useRef, useState } from "react";
import { Press } from "@/app/_parts/press";
import { openWorkerDesk, startCheckWorker } from "@/app/_photo/worker-desk";
import { CheckFrame } from "../check-frame";
import { PhotoInput } from "../choose/photo-input";
import { ChoosePicture } from "./choose-picture";
import { EyeBoard } from "./eye-board";
import { EyeContext, useEye, useEyeRoom } from "./eye-context";
import { createEye } from "./eye-store";
import { StraightenEye } from "./straighten-eye";
import { useOpenPicture } from "./use-open-picture";
import "../check.css";
import "./eye.css";

/** From any picture of a drawing to the eye that drew it. */
export function WhoseEyePage() {
  const [room] = useState(() => ({ store: createEye(), worker: openWorkerDesk(startCheckWorker) }));
  useEffect(() => room.store.getState().open(), [room]);
  useEffect(() => () => room.worker.close(), [room]);
  return (
    <EyeContext value={room}>
      <Stages />
    </EyeContext>
  );
}

function Stages() {
  const { store } = useEyeRoom();
  const opened = useEye((eye) => eye.opened);
  const stage = useEye((eye) => eye.stage);
  const work = useEye((eye) => eye.work);
  const { openPicture, straighten } = useOpenPicture();
  if (!opened) return <CheckFrame title="Check">{null}</CheckFrame>;
  if (stage.at === "working")
    return (
      <CheckFrame title="Check">
        <div className="check-paper check-working ruled" role="status">
          <p className="lettering">{stage.words}…</p>
          <p>Everything is done in this browser. The picture goes to no server.</p>
        </div>
      </CheckFrame>
    );
  if (stage.at === "refused")
    return (
      <RefusedPicture
        {...stage}
        onFile={openPicture}
        onBack={() => store.getState().show({ at: work ? "marking" : "choose" })}
      />
    );
  if (stage.at === "straighten" && work)
    return <StraightenEye work={work} onSet={(corners, size) => straighten(work.photo.address, corners, size)} />;
  if (stage.at === "marking" && work) return <EyeBoard work={work} />;
  return <ChoosePicture onFile={openPicture} />;
}

type RefusedProps = {
  readonly say: string;
  readonly remedy: string;
  readonly onFile: (file: Blob) => void;
  readonly onBack: () => void;
};

function RefusedPicture({ say, remedy, onFile, onBack }: RefusedProps) {
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
            <PhotoInput onFile={onFile} words="Another picture" />
            <Press onClick={onBack}>Back</Press>
          </div>
        </div>
      </div>
    </CheckFrame>
  );
}
