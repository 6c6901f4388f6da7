import type { Metadata } from "next";
import Link from "next/link";
import { PressLink } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { LIMITS_IN_WORDS } from "@/lib/classroom/library/library-limits";
import { plansOfTeacher } from "@/lib/classroom/library/read-library";
import { ClassFrame } from "../class-frame";
import { Closed } from "../closed";
import { ownLibrary } from "../own-library";
import { Part } from "../part";
import { ThrownPlans } from "./thrown-plans";

export const metadata: Metadata = { title: "Your plans" };

/** A teacher's library: the plans kept in it, and those thrown away. */
export default async function PlansPage() {
  const own = await ownLibrary();
  if (!own.ok) return <Closed sentence={own.sentence} />;
  const rows = await plansOfTeacher(own.store, own.teacherId);
  const [plans, thrown] = [rows.filter((row) => row.thrown_at === null), rows.filter((row) => row.thrown_at !== null)];
  return (
    <ClassFrame title="Your plans" name={own.name}>
      <Part id="plans" title="In your library" note={`Kept on this server, for you alone. ${LIMITS_IN_WORDS}`}>
        {plans.length === 0 && (
          <p>
            There is none in it just now. Draw one on the drafting desk; under Plans, at the top of its page, you keep
            it in your library.
          </p>
        )}
        <ul>
          {plans.map(({ id, title, words, changed_at, share_word }) => (
            <li key={id} className="class-row">
              <Link href={`/class/plans/${id}`} className="plain-link" prefetch={false}>
                {title}
              </Link>
              {words !== "" && <span>{words}</span>}
              <span>
                kept <When at={changed_at} />
                {share_word !== null && ", shared"}
              </span>
              <PressLink href={`/draft/library?plan=${id}`} weight="small">
                Open in Draft
              </PressLink>
            </li>
          ))}
        </ul>
        <div className="class-presses">
          <PressLink href="/draft">To the drafting desk</PressLink>
        </div>
      </Part>
      {thrown.length > 0 && <ThrownPlans plans={thrown} />}
    </ClassFrame>
  );
}
