import type { Metadata } from "next";
import { DraftingDesk } from "./drafting-desk";

export const metadata: Metadata = { title: "Draft a plan" };

/** A plan drawn by its teacher, to become an exercise. */
export default function DraftPage() {
  return <DraftingDesk />;
}
