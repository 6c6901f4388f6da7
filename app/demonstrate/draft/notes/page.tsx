import type { Metadata } from "next";
import { OwnNotes } from "./own-notes";

export const metadata: Metadata = { title: "Notes" };

/** The teacher's window beside the demonstration of an exercise from the drafting desk. */
export default function OwnNotesPage() {
  return <OwnNotes />;
}
