import type { Metadata } from "next";
import { openClassroom } from "@/app/_server/classroom";
import { ClassFrame } from "../class-frame";
import { Closed } from "../closed";
import { Invited } from "./invited";

export const metadata: Metadata = { title: "Teach here" };

/** Where an invited teacher comes in by a word, or by a link whose end only the browser sees. */
export default async function InvitedPage() {
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  return (
    <ClassFrame title="Teach here">
      <Invited />
    </ClassFrame>
  );
}
