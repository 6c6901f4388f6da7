import type { Metadata } from "next";
import { headers } from "next/headers";
import { PlainPage } from "@/app/_parts/plain-page";
import { PressLink } from "@/app/_parts/press";
import { openClassroom } from "@/app/_server/classroom";
import { readClient } from "@/app/_server/client";
import { sayWait } from "@/lib/classroom/accounts/tries";
import { findVoteByCode } from "@/lib/classroom/live/find-vote";
import { thawExercise } from "@/lib/classroom/live/freeze-exercise";
import { liveState } from "@/lib/classroom/live/live-state";
import { PhoneVote } from "./phone-vote";
import "./live.css";

export const metadata: Metadata = { title: "Place it" };

type Props = { readonly params: Promise<{ readonly code: string }> };

/** The phones' page of a vote. */
export default async function LivePage({ params }: Props) {
  const [asked, { code }] = [await headers(), await params];
  const opened = await openClassroom();
  if (!opened.ok)
    return (
      <PlainPage title="Class is closed just now">
        <p>{opened.refusal.sentence}</p>
      </PlainPage>
    );
  const { store } = opened.classroom;
  const found = await findVoteByCode(store, code.slice(0, 20), readClient(asked).address);
  if (found.kind === "too-many") return <NoVote sentence={sayWait(found.waitS)} />;
  const state = found.kind === "found" ? await liveState(store, found.vote.id) : null;
  if (found.kind !== "found" || !state)
    return <NoVote sentence="There is nothing to place under this code: it was mistyped, or it is over." />;
  const { id, exercise, point } = found.vote;
  return (
    <>
      <noscript>
        <PlainPage title="This page needs JavaScript">
          <p>Placing a mark is done in your browser. Turn JavaScript on for this address, then load the page again.</p>
        </PlainPage>
      </noscript>
      <PhoneVote key={id} voteId={id} exercise={thawExercise(exercise)} point={point} first={state} />
    </>
  );
}

function NoVote({ sentence }: { readonly sentence: string }) {
  return (
    <PlainPage title="Nobody is let in here" actions={<PressLink href="/live">Write another code</PressLink>}>
      <p>{sentence}</p>
    </PlainPage>
  );
}
