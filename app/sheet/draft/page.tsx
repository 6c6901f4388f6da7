import type { Metadata } from "next";
import "../[id]/sheet.css";
import { OwnSheet } from "./own-sheet";

export const metadata: Metadata = { title: "Print" };

/** An exercise from the drafting desk on paper. */
export default function OwnSheetPage() {
  return <OwnSheet />;
}
