import type { Metadata } from "next";
import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { openClassroom } from "@/app/_server/classroom";
import { phoneAddress } from "@/app/_server/phone-address";
import { mayDo } from "@/lib/classroom/access/may-do";
import { findVote } from "@/lib/classroom/live/find-vote";
import { thawExercise } from "@/lib/classroom/live/freeze-exercise";
import { liveState } from "@/lib/classroom/live/live-state";
import { Closed } from "../../../closed";
import { CodeDrawing } from "../../code-drawing";
import { FrontScreen } from "./front-screen";

export const metadata: Metadata = { title: "Everyone places it" };

type Props = { readonly params: Promise<{ readonly classId: string; readonly voteId: string }> };

/** A vote on the screen at the front. */
export default async function FrontPage({ params }: Props) {
  const [asked, { classId, voteId }] = [await headers(), await params];
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const { store, whoIs } = opened.classroom;
  const found = await findVote(store, voteId);
  if (!found || found.vote.class_id !== classId || !mayDo(await whoIs(asked), "run-vote", found.subject)) notFound();
  const state = await liveState(store, voteId);
  if (!state) notFound();
  const { exercise, point, code } = found.vote;
  const { base, guessed } = phoneAddress(asked);
  return (
    <FrontScreen
      key={voteId}
      classId={classId}
      voteId={voteId}
      exercise={thawExercise(exercise)}
      point={point}
      first={state}
      code={code}
      address={`${base.replace(/^https?:\/\//, "")}/live`}
      guessed={guessed}
    >
      <CodeDrawing text={`${base}/live/${code}`} label={`Code to scan, for ${base}/live/${code}`} />
    </FrontScreen>
  );
}
