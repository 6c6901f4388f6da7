"use client";

import { useId } from "react";

type Props = {
  readonly onFile: (file: Blob) => void;
  readonly words: string;
  readonly weight?: "main" | "plain";
  /** Opens the camera at once, where there is one: a phone's way to take a photograph, over plain http too. */
  readonly camera?: boolean;
};

/** HEIC is named by its endings: not every browser knows its type. */
const ACCEPT = "image/*,.heic,.heif";

/** A press that lets the reader choose a photograph. */
export function PhotoInput({ onFile, words, weight = "main", camera = false }: Props) {
  const id = useId();
  return (
    <span className="photo-input">
      <input
        id={id}
        type="file"
        accept={ACCEPT}
        {...(camera ? { capture: "environment" } : {})}
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file can be chosen again.
          event.target.value = "";
          if (file) onFile(file);
        }}
      />
      <label htmlFor={id} className="press ruled" data-weight={weight}>
        {words}
      </label>
    </span>
  );
}
