import type { Metadata } from "next";
import { openClassroom } from "@/app/_server/classroom";
import { ClassFrame } from "../class-frame";
import { Closed } from "../closed";
import { Back } from "./back";

export const metadata: Metadata = { title: "Come back to your class" };

/** Where a student comes back by passphrase, or by the private link whose end only the browser sees. */
export default async function BackPage() {
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  return (
    <ClassFrame title="Come back">
      <Back />
    </ClassFrame>
  );
}
