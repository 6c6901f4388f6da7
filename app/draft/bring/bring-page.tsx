"use client";

import Link from "next/link";
import { useEffect, useState } from "react";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { Press } from "@/app/_parts/press";
import type { Problem } from "@/lib/exercise/problem";
import { openBringDesk, startBringWorker } from "./bring-desk";
import { ChooseFile } from "./choose-file";
import { DrawingOnTable } from "./drawing-on-table";
import type { ShownDrawing } from "./worker/messages";
import "../draft.css";
import "./bring.css";

type Stage =
  | { readonly stage: "choose"; readonly problem: Problem | null; readonly name: string }
  | { readonly stage: "reading"; readonly name: string }
  | { readonly stage: "read"; readonly name: string; readonly drawing: ShownDrawing };

/** Bringing a drawing: first its file, then where it lies on the stage and what its layers are. */
export function BringPage() {
  const [desk] = useState(() => openBringDesk(startBringWorker));
  const [now, setNow] = useState<Stage>({ stage: "choose", problem: null, name: "" });
  useEffect(() => () => desk.close(), [desk]);
  const read = async (file: File) => {
    const { name } = file;
    setNow({ stage: "reading", name });
    try {
      const answer = await desk.read(file);
      setNow(
        answer.ok
          ? { stage: "read", name, drawing: answer.drawing }
          : { stage: "choose", name, problem: answer.problem },
      );
    } catch (reason) {
      const message = reason instanceof Error ? reason.message : "it cannot be read";
      setNow({ stage: "choose", name, problem: { where: "the file", message, hint: "choose it again" } });
    }
  };
  return (
    <main className="draft-board bring-board" data-stage={now.stage}>
      <header className="draft-edge">
        <Link href="/draft" className="plain-link lettering bring-leave" prefetch={false}>
          To the desk
        </Link>
        {now.stage === "read" && (
          <Press
            weight="small"
            className="bring-leave"
            onClick={() => setNow({ stage: "choose", problem: null, name: "" })}
          >
            Another file
          </Press>
        )}
        <h1 className="draft-title">{now.stage === "read" ? now.name : "Bring a plan"}</h1>
        <LookDisclosure />
      </header>
      {now.stage === "read" ? (
        <DrawingOnTable desk={desk} drawing={now.drawing} name={now.name} />
      ) : (
        <ChooseFile
          problem={now.stage === "choose" ? now.problem : null}
          name={now.name}
          reading={now.stage === "reading"}
          onFile={read}
        />
      )}
    </main>
  );
}
