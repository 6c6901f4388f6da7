import type { Metadata } from "next";
import { ClassFrame } from "../class-frame";
import { Folder } from "./folder";

export const metadata: Metadata = { title: "A folder of marks" };

/** The gradebook of saved marks, for a class that hands in by file: no store, no accounts. */
export default function FolderPage() {
  return (
    <ClassFrame
      title="A folder of marks"
      lead="Marks that students saved at the end of an exercise, graded all at once. Nothing is kept."
    >
      <Folder />
    </ClassFrame>
  );
}
