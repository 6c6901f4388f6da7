"use client";

import { type ChangeEvent, type DragEvent, useId, useState } from "react";
import { Part } from "../../part";

/** Where photographs and scans are dropped or chosen. */
export function PileDrop({ onFiles }: { readonly onFiles: (files: readonly File[]) => void }) {
  const [over, setOver] = useState(false);
  const input = useId();
  const chosen = (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.target.files ?? [])];
    // The same file may be chosen again.
    event.target.value = "";
    if (files.length > 0) onFiles(files);
  };
  const dropped = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    onFiles([...event.dataTransfer.files]);
  };
  return (
    <Part
      id="photographs"
      title="The photographs"
      note="They are read in this browser and stay here: the server is given the points that you confirm, and no picture. Where and when a photograph was taken is not even read. Nothing of the pile is kept when you leave the page."
    >
      <section
        aria-label="Drop photographs here"
        className="pile-drop"
        data-over={over || undefined}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={dropped}
      >
        <p>
          Drop photographs of printed sheets here, or one scan of many pages from the copier (PDF, 200 dots to the inch
          or more), or choose them. Each page finds its exercise by its code.
        </p>
        <label className="press ruled" data-weight="main" htmlFor={input}>
          Choose photographs or a scan
          <input
            id={input}
            type="file"
            multiple
            accept="image/*,.heic,.heif,application/pdf"
            className="pile-input"
            onChange={chosen}
          />
        </label>
      </section>
    </Part>
  );
}
