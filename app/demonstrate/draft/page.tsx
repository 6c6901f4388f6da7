import type { Metadata } from "next";
import { OwnDemonstration } from "./own-demonstration";

export const metadata: Metadata = { title: "Demonstrate" };

/** An exercise from the drafting desk before a room. */
export default function OwnDemonstrationPage() {
  return <OwnDemonstration />;
}
