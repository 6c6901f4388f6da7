"use client";

import { FileChoice, FileDrop } from "@/app/_parts/file-drop";
import { Part } from "../../part";

/** Where photographs and scans are dropped or chosen. */
export function PileDrop({ onFiles }: { readonly onFiles: (files: readonly File[]) => void }) {
  return (
    <Part
      id="photographs"
      title="The photographs"
      note="They are read in this browser and stay here: the server is given the points that you confirm, and no picture. Where and when a photograph was taken is not even read. Nothing of the pile is kept when you leave the page."
    >
      <FileDrop label="Drop photographs here" onDrop={({ files }) => onFiles([...files])}>
        <p>
          Drop photographs of printed sheets here, or one scan of many pages from the copier (PDF, 200 dots to the inch
          or more), or choose them. Each page finds its exercise by its code.
        </p>
        <FileChoice
          words="Choose photographs or a scan"
          weight="main"
          many
          accept="image/*,.heic,.heif,application/pdf"
          onFiles={onFiles}
        />
      </FileDrop>
    </Part>
  );
}
