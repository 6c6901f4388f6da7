import type { Metadata } from "next";
import { makeGradebook } from "@/lib/classroom/gradebook/make-gradebook";
import { readGradebook } from "@/lib/classroom/gradebook/read-gradebook";
import { ClassFrame } from "../../class-frame";
import { ClassPaths } from "../../class-paths";
import { Closed } from "../../closed";
import { ownClass } from "../../own-class";
import { Part } from "../../part";
import { GradebookDesk } from "./gradebook-desk";
import { Regrade } from "./regrade";
import { Weights } from "./weights";

export const metadata: Metadata = { title: "Gradebook" };

type Props = { readonly params: Promise<{ readonly classId: string }> };

/** Every student's work in one table, and all that a teacher changes about it. */
export default async function GradebookPage({ params }: Props) {
  const { classId } = await params;
  const own = await ownClass(classId, "see-gradebook");
  if (!own.ok) return <Closed sentence={own.sentence} />;
  const gradebook = makeGradebook(await readGradebook(own.store, classId), new Date().toISOString());
  const { work, rows } = gradebook;
  return (
    <ClassFrame title={`${own.title}: gradebook`} name={own.name}>
      <ClassPaths classId={classId} here="/gradebook" />
      {rows.length === 0 && <p>Nobody is in this class yet.</p>}
      {work.length === 0 ? (
        <p>No homework has been set yet. Its scores come here by themselves.</p>
      ) : (
        <>
          <GradebookDesk classId={classId} gradebook={gradebook} />
          <Part
            id="files"
            title="As a file"
            note="Comma-separated, for a spreadsheet. A name that a spreadsheet would take for a formula has an apostrophe before it."
          >
            <div className="class-presses">
              <a className="press ruled" href={`/api/class/gradebook?classId=${classId}`} download>
                Save the table
              </a>
              <a className="press ruled" href={`/api/class/gradebook?classId=${classId}&form=results`} download>
                Save results for another system
              </a>
            </div>
            <p className="class-quiet">
              The second is an archive as OneRoster 1.2 has it: a manifest, what was set (lineItems.csv) and the results
              (results.csv), with this server’s own ids. Categories, terms and schools are not kept here, so their
              columns are empty. To print, use the browser’s print: only the table goes on the paper.
            </p>
          </Part>
          <Part
            id="weights"
            title="Weights"
            note="A student’s mean is that of the homework by weight, and a homework’s that of its exercises. Excused work is left out; missing work counts 0 once it is due."
          >
            <Weights classId={classId} work={work} />
          </Part>
          <Part
            id="regrade"
            title="Grade anew"
            note="After an exercise, how strictly it is judged, or Plasterline itself has changed. You see what would change before anything does. Scores by hand stay."
          >
            <Regrade classId={classId} work={work.map(({ id, title }) => ({ id, title }))} />
          </Part>
        </>
      )}
    </ClassFrame>
  );
}
