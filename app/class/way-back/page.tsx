import type { Metadata } from "next";
import { openClassroom } from "@/app/_server/classroom";
import { ClassFrame } from "../class-frame";
import { Closed } from "../closed";
import { WayBack } from "./way-back";

export const metadata: Metadata = { title: "A teacher's way back" };

/** Where a teacher who lost the password chooses another, by a one-time word. */
export default async function WayBackPage() {
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  return (
    <ClassFrame title="A teacher's way back">
      <WayBack />
    </ClassFrame>
  );
}
