import type { Metadata } from "next";
import { CopyToDesk } from "./copy-to-desk";

export const metadata: Metadata = { title: "A plan for you" };

/** Where a plan comes in, by link or from a file: it is looked at, practised, or copied to the desk. */
export default function CopyPage() {
  return <CopyToDesk />;
}
