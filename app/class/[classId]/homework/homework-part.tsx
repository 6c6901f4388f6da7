import Link from "next/link";
import { PressLink } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { homeworkOfClass } from "@/lib/classroom/homework/homework-of-class";
import type { Store } from "@/lib/classroom/store/store";
import { Part } from "../../part";

/** The homework of a class: what is out, and how many have handed it in. */
export async function HomeworkPart({ store, classId }: { readonly store: Store; readonly classId: string }) {
  const rows = await homeworkOfClass(store, classId);
  const [out, away] = [rows.filter(({ archived }) => archived === 0), rows.filter(({ archived }) => archived === 1)];
  const list = (some: typeof rows) => (
    <ul>
      {some.map(({ id, title, due_at, done, students }) => (
        <li key={id} className="class-row">
          <Link href={`/class/${classId}/homework/${id}`} className="plain-link" prefetch={false}>
            {title}
          </Link>
          <span>
            {due_at === null ? (
              "any time"
            ) : (
              <>
                due <When at={due_at} />
              </>
            )}
          </span>
          <span>
            {done} of {students} handed in
          </span>
        </li>
      ))}
    </ul>
  );
  return (
    <Part id="homework" title="Homework" note="Students see what is set to them as soon as you set it.">
      {out.length === 0 && <p>None is out just now.</p>}
      {list(out)}
      {away.length > 0 && (
        <details>
          <summary>Put away ({away.length})</summary>
          {list(away)}
        </details>
      )}
      <div className="class-presses">
        <PressLink href={`/class/${classId}/homework/set`} weight="main">
          Set homework
        </PressLink>
      </div>
    </Part>
  );
}
