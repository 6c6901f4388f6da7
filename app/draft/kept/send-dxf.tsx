"use client";

import { useId, useState } from "react";
import { Press } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";
import { cautionOf } from "@/lib/draft/send/caution-of";
import { SENT_UNITS, type SentUnit, usualUnit } from "@/lib/draft/send/sent-unit";
import type { Exercise } from "@/lib/exercise/exercise";
import { fileName } from "./file-name";

/** The plan and the picture as DXF files for other programs. What writes them is fetched when one is asked for. */
export function SendDxf({ exercise }: { readonly exercise: Exercise }) {
  const id = useId();
  const [chosen, setChosen] = useState<SentUnit | null>(null);
  const [said, setSaid] = useState("");
  const unit = chosen ?? usualUnit(exercise.units);
  const caution = cautionOf(exercise);
  const send = async (what: "plan" | "picture") => {
    try {
      const text =
        what === "plan"
          ? (await import("@/lib/draft/send/send-plan")).sendPlan(exercise, unit)
          : (await import("@/lib/draft/send/send-picture")).sendPicture(exercise, unit);
      const name = `${fileName(exercise.title)}-${what}.dxf`;
      saveFile(name, text, "image/vnd.dxf");
      setSaid(`Saved as ${name}.`);
    } catch {
      setSaid("What writes DXF could not be fetched. Try again.");
    }
  };
  return (
    <div className="draft-send">
      <div className="draft-presses">
        <Press weight="small" onClick={() => send("plan")}>
          DXF of the plan
        </Press>
        <Press weight="small" onClick={() => send("picture")}>
          DXF of the picture
        </Press>
        <label className="draft-steps" htmlFor={id}>
          <span className="small-lettering">counted in</span>
          <select
            id={id}
            className="look-list"
            value={unit}
            onChange={(event) => setChosen(SENT_UNITS.find((each) => each === event.target.value) ?? null)}
          >
            {SENT_UNITS.map((each) => (
              <option key={each} value={each}>
                {each}
              </option>
            ))}
          </select>
        </label>
      </div>
      {caution && <p className="draft-note">{caution} The files say so too.</p>}
      <p role="status" className="draft-note">
        {said}
      </p>
    </div>
  );
}
