"use client";

import { useState } from "react";
import { Press } from "@/app/_parts/press";
import { type CheckedDrawing, marksOf } from "@/app/_photo/checked-drawing";

/** A page to keep or to hang up: asked for with the marks, and made by the server that the page came from. */
export function ReportPress({ drawing }: { readonly drawing: CheckedDrawing }) {
  const [state, setState] = useState<"ready" | "making" | "failed">("ready");
  const get = async () => {
    setState("making");
    try {
      const answer = await fetch("/check/report", {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify({ marks: marksOf(drawing), ownEye: drawing.ownEye }),
      });
      if (!answer.ok) throw new Error("not made");
      saveBlob(`${drawing.exercise}-report.pdf`, await answer.blob());
      setState("ready");
    } catch {
      setState("failed");
    }
  };
  return (
    <>
      <Press onClick={() => void get()} aria-disabled={state === "making"}>
        {state === "making" ? "Making it…" : "Get a report, PDF"}
      </Press>
      {state === "failed" && (
        <p role="status" className="check-note">
          The report could not be made, perhaps because the network is away. Your marks are kept; try again.
        </p>
      )}
    </>
  );
}

function saveBlob(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
