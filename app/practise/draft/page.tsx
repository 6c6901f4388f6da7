import type { Metadata } from "next";
import { OwnPractise } from "./own-practise";

export const metadata: Metadata = { title: "Practise" };

/** Practise on an exercise that is in no course: one from the drafting desk, or one that came as a link. */
export default function OwnPractisePage() {
  return <OwnPractise />;
}
