import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { PressLink } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { type DueItem, type DueWork, resultsOf, whatIsDue } from "@/lib/classroom/homework/what-is-due";
import type { Store } from "@/lib/classroom/store/store";
import { UNITS } from "@/lib/exercise/exercise";
import { Part } from "./part";

type Props = {
  readonly store: Store;
  readonly memberId: string;
  /** The class, where there are several. */
  readonly title: string | null;
};

/** What is due for a student in a class, and what has come of the rest. */
export async function StudentWork({ store, memberId, title }: Props) {
  const now = new Date();
  const [due, results] = [await whatIsDue(store, memberId, now), await resultsOf(store, memberId, now)];
  const note = title === null ? {} : { note: title };
  return (
    <>
      <Part id={`due-${memberId}`} title="To do" {...note}>
        {due.length === 0 && <p>Nothing just now.</p>}
        {due.map((work) => (
          <Work key={work.homeworkId} work={work} />
        ))}
      </Part>
      {results.length > 0 && (
        <Part id={`done-${memberId}`} title="Done" {...note}>
          {results.map((work) => (
            <Work key={work.homeworkId} work={work} />
          ))}
        </Part>
      )}
    </>
  );
}

function Work({ work }: { readonly work: DueWork }) {
  return (
    <section aria-label={work.title} className="class-work">
      <h3>{work.title}</h3>
      <p className="class-quiet">
        {work.excused && "You are excused from this. "}
        {work.dueAt === null ? (
          "Any time"
        ) : (
          <>
            {work.overdue ? "Was due" : "Due"} <When at={work.dueAt} />
          </>
        )}
        {!work.released && "; scores and corrections come after that"}
      </p>
      <ul>
        {work.items.map((item) => (
          <li key={item.itemId} className="class-row">
            <span>{itemWords(item)}</span>
            <span>{stateWords(item)}</span>
            <PressLink
              href={`/practise/${item.exerciseId}?homework=${item.itemId}`}
              weight={item.handedIn === 0 ? "main" : "small"}
            >
              {item.handedIn === 0 ? "Draw it" : work.released ? "See it" : "Open it"}
            </PressLink>
            {item.attemptsLeft !== 0 && (
              <PressLink href={`/check?homework=${item.itemId}`} weight="small">
                From a photograph
              </PressLink>
            )}
            {item.openHandIn !== null && (
              <PressLink href={`/class/${work.classId}/drawing/${item.openHandIn}`} weight="small">
                Remarks
              </PressLink>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function itemWords({ title, unit, level }: DueItem): string {
  const known = UNITS.find((each) => each === unit);
  return title ?? `${known ? UNIT_WORDS[known].title : "An exercise"}, level ${level}`;
}

function stateWords({ handedIn, score, late, attemptsLeft }: DueItem): string {
  const left = leftWords(attemptsLeft);
  if (handedIn === 0) return left;
  const parts = [score === null ? "handed in" : `${Math.round(score)} of 100`, late ? "late" : "", left];
  return parts.filter((part) => part !== "").join(", ");
}

function leftWords(attemptsLeft: number | null): string {
  if (attemptsLeft === null) return "";
  if (attemptsLeft === 0) return "no attempt left";
  return attemptsLeft === 1 ? "1 attempt left" : `${attemptsLeft} attempts left`;
}
