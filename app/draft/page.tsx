import type { Metadata } from "next";
import { DraftingDesk } from "./drafting-desk";
import { findLibrary } from "./library/find-library";

export const metadata: Metadata = { title: "Draft a plan" };

/** A plan drawn by its teacher, to become an exercise. */
export default async function DraftPage() {
  return <DraftingDesk library={await findLibrary()} />;
}
