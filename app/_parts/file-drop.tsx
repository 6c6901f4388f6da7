"use client";

import { type ChangeEvent, type DragEvent, type ReactNode, type Ref, useId, useState } from "react";
import "./file-drop.css";

type DropProps = {
  /** What is dropped here, for readers of the screen. */
  readonly label: string;
  readonly onDrop: (dropped: DataTransfer) => void;
  readonly children: ReactNode;
};

/** A dashed field on to which files are dropped; it lights up under them. */
export function FileDrop({ label, onDrop, children }: DropProps) {
  const [over, setOver] = useState(false);
  const dropped = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    onDrop(event.dataTransfer);
  };
  return (
    <section
      aria-label={label}
      className="file-drop"
      data-over={over || undefined}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={dropped}
    >
      {children}
    </section>
  );
}

type ChoiceProps = {
  readonly words: string;
  readonly weight?: "main" | "plain" | "small";
  readonly accept?: string;
  readonly many?: boolean;
  readonly inputRef?: Ref<HTMLInputElement>;
  readonly onFiles: (files: readonly File[]) => void;
};

/** A press that opens the computer's own choice of files. The same file may be chosen again. */
export function FileChoice({ words, weight = "plain", accept, many = false, inputRef, onFiles }: ChoiceProps) {
  const id = useId();
  const chosen = (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.target.files ?? [])];
    event.target.value = "";
    if (files.length > 0) onFiles(files);
  };
  return (
    <label className="press ruled file-choice" data-weight={weight} htmlFor={id}>
      {words}
      <input id={id} ref={inputRef} type="file" multiple={many} accept={accept} onChange={chosen} />
    </label>
  );
}
