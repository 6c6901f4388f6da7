"use client";

import { type DragEvent, useId, useState } from "react";
import type { Problem } from "@/lib/exercise/problem";

type Props = {
  /** Why the last file could not be read; null for none. */
  readonly problem: Problem | null;
  readonly name: string;
  readonly reading: boolean;
  readonly onFile: (file: File) => void;
};

/** Where a file is chosen or let fall. */
export function ChooseFile({ problem, name, reading, onFile }: Props) {
  const id = useId();
  const [over, setOver] = useState(false);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    const file = event.dataTransfer.files[0];
    if (file) onFile(file);
  };
  return (
    <section
      aria-label="The drawing's file"
      className="bring-choose ruled"
      data-over={over || undefined}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <p>
        A ground plan drawn with another program comes in as a <strong>DXF</strong> file (R12 to 2018, in letters or in
        bytes) or as <strong>SVG</strong>. Its lines are read here in the browser; nothing is sent anywhere.
      </p>
      <p>
        <label htmlFor={id} className="press ruled" data-weight="main">
          Choose a DXF or SVG file
        </label>
        <input
          id={id}
          type="file"
          className="aloud"
          accept=".dxf,.svg,image/svg+xml,image/vnd.dxf"
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = "";
            if (file) onFile(file);
          }}
        />
      </p>
      <p className="draft-note">Or let it fall here. At most 20 MB.</p>
      <p role="status">{reading ? `Reading ${name}.` : ""}</p>
      {problem && (
        <div className="draft-wrong" role="alert">
          <p>
            {name} cannot be read. In {problem.where}: {problem.message}.
          </p>
          <p>To mend it: {problem.hint}. What is on your desk is as it was.</p>
        </div>
      )}
    </section>
  );
}
