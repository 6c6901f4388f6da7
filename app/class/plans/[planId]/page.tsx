import type { Metadata } from "next";
import { headers } from "next/headers";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PressLink } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { phoneAddress } from "@/app/_server/phone-address";
import { planSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { classesOfTeacher } from "@/lib/classroom/accounts/classes";
import { LIMITS_IN_WORDS } from "@/lib/classroom/library/library-limits";
import { planWithText, versionsOfPlan } from "@/lib/classroom/library/read-library";
import { faultsOf } from "@/lib/exercise/check-sense";
import { readExercise } from "@/lib/exercise/read-exercise";
import { ClassFrame } from "../../class-frame";
import { Closed } from "../../closed";
import { ownLibrary } from "../../own-library";
import { Part } from "../../part";
import { PlanDrawings } from "../../plan-drawings";
import { PlanVersions } from "./plan-versions";
import { SetIt } from "./set-it";
import { SharePlan } from "./share-plan";
import { ThrowAway } from "./throw-away";

export const metadata: Metadata = { title: "A plan of yours" };

type Props = { readonly params: Promise<{ readonly planId: string }> };

/** One plan of a teacher's library: what it is, and all that can be done with it. */
export default async function PlanPage({ params }: Props) {
  const [asked, { planId }] = [await headers(), await params];
  const own = await ownLibrary();
  if (!own.ok) return <Closed sentence={own.sentence} />;
  const { store, teacherId, name } = own;
  const [subject, plan] = [await planSubject(store, planId), await planWithText(store, planId)];
  const person = { kind: "teacher", userId: teacherId, name } as const;
  // Someone else's plan looks like none at all.
  if (!subject || !plan || !mayDo(person, "see-plan", subject)) notFound();
  const { title, words, changed_at, edition, share_word, thrown_at } = plan;
  const reading = readExercise(plan.text);
  const versions = await versionsOfPlan(store, planId);
  const { base, guessed } = phoneAddress(asked);
  const file = `/api/class/plan?planId=${planId}`;
  return (
    <ClassFrame
      title={title}
      name={name}
      lead={
        <Link href="/class/plans" className="plain-link" prefetch={false}>
          All your plans
        </Link>
      }
    >
      <Part
        id="plan"
        title="The plan"
        note={
          <>
            {words !== "" && `${words}. `}Kept <When at={changed_at} />.
            {thrown_at !== null && " You threw it away; it can be taken back."}
          </>
        }
      >
        {reading.ok ? (
          <PlanDrawings exercise={reading.exercise} />
        ) : (
          <p>This Plasterline cannot read it, so it cannot be drawn. It is kept as it is.</p>
        )}
        <div className="class-presses">
          <PressLink href={`/draft/library?plan=${planId}`} weight="main">
            Open in Draft
          </PressLink>
          <a className="press ruled" href={file} download={`${reading.ok ? reading.exercise.id : "plan"}.json`}>
            Save the file
          </a>
        </div>
      </Part>
      {reading.ok && thrown_at === null && (
        <SetIt planId={planId} faults={faultsOf(reading.exercise)} classes={await classesOfTeacher(store, teacherId)} />
      )}
      {thrown_at === null && (
        <Part
          id="share"
          title="Share it"
          note="A colleague who teaches here follows the link and takes a copy. Nobody changes yours."
        >
          <SharePlan planId={planId} word={share_word} base={base} guessed={guessed} />
        </Part>
      )}
      <Part
        id="versions"
        title="Earlier versions"
        note={`Each time you keep the plan, the one before it comes here. ${LIMITS_IN_WORDS}`}
      >
        <PlanVersions planId={planId} edition={edition} versions={versions} />
      </Part>
      <Part id="away" title="Throw it away" note="It can be taken back for a while. A link to it ends at once.">
        <ThrowAway planId={planId} title={title} thrown={thrown_at !== null} />
      </Part>
    </ClassFrame>
  );
}
