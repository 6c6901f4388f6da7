import type { Metadata } from "next";
import Link from "next/link";
import { readMarksOfClass, readTeachAgain } from "@/lib/classroom/teach-again/read-teach-again";
import { sayDifficulty, sayDiscrimination, saySmall } from "@/lib/classroom/teach-again/say-figures";
import { ClassFrame } from "../../class-frame";
import { ClassPaths } from "../../class-paths";
import { Closed } from "../../closed";
import { ownClass } from "../../own-class";
import { Part } from "../../part";
import { ClassHabits } from "./class-habits";
import { OneCorner } from "./one-corner";
import "../../gradebook.css";

export const metadata: Metadata = { title: "Teach again" };

type Props = {
  readonly params: Promise<{ readonly classId: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** What the class's work tells its teacher: which exercises are hard, which ideas are held, where a corner went. */
export default async function TeachAgainPage({ params, searchParams }: Props) {
  const [{ classId }, asked] = [await params, await searchParams];
  const own = await ownClass(classId, "see-teach-again");
  if (!own.ok) return <Closed sentence={own.sentence} />;
  const { gradebook, figures, habits } = await readTeachAgain(own.store, classId, new Date().toISOString());
  const columns = gradebook.work.flatMap(({ columns: each }) => each);
  const names = new Map(gradebook.rows.map(({ student }) => [student.memberId, student.name]));
  const drawn = columns.filter((_, i) => (figures[i]?.n ?? 0) > 0);
  const item = drawn.find(({ itemId }) => itemId === asked.item) ?? drawn[0];
  const one = item && (await readMarksOfClass(own.store, gradebook, item.itemId));
  return (
    <ClassFrame title={`${own.title}: teach again`} name={own.name}>
      <ClassPaths classId={classId} here="/teach-again" />
      {drawn.length === 0 && <p>Nothing has been handed in yet. Come back when something has.</p>}
      {drawn.length > 0 && (
        <>
          <Part
            id="exercises"
            title="Exercises"
            note="Mean share of the score, and how well each exercise tells those who do well in the others from those who do not (corrected item-total correlation, from -1 to 1)."
          >
            <p>{saySmall(gradebook.rows.length)}</p>
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys */}
            <section className="class-table" aria-label="Figures of the exercises" tabIndex={0}>
              <table>
                <thead>
                  <tr>
                    <th scope="col">Exercise</th>
                    <th scope="col">Drawn by</th>
                    <th scope="col">Mean share</th>
                    <th scope="col">Tells apart</th>
                  </tr>
                </thead>
                <tbody>
                  {columns.map(({ itemId, title }, i) => {
                    const figure = figures[i];
                    return (
                      figure && (
                        <tr key={itemId}>
                          <th scope="row">{title}</th>
                          <td>{figure.n}</td>
                          <td>{sayDifficulty(figure)}</td>
                          <td>{sayDiscrimination(figure)}</td>
                        </tr>
                      )
                    );
                  })}
                </tbody>
              </table>
            </section>
          </Part>
          <ClassHabits habits={habits} names={names} />
          <Part
            id="corner"
            title="One corner, everyone’s"
            note="Each student’s mark for one point on one sheet, from the attempt that counts."
          >
            <ul className="class-paths" aria-label="Exercise">
              {drawn.map(({ itemId, title }) => (
                <li key={itemId}>
                  {itemId === item?.itemId ? (
                    <span aria-current="page">{title}</span>
                  ) : (
                    <Link href={`?item=${itemId}#corner`} className="plain-link" prefetch={false}>
                      {title}
                    </Link>
                  )}
                </li>
              ))}
            </ul>
            {item && one ? (
              <OneCorner
                key={item.itemId}
                exercise={one.exercise}
                marks={[...one.marks]}
                students={gradebook.rows.length}
              />
            ) : (
              <p>Every student drew a variant of their own here, so their marks have no sheet in common.</p>
            )}
          </Part>
        </>
      )}
    </ClassFrame>
  );
}
