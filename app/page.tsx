import type { Metadata } from "next";
import Link from "next/link";
import { CoverDrawing } from "./_home/cover-drawing";
import { KeepWork } from "./_home/keep-work";
import { NextStep } from "./_home/next-step";
import { Standing } from "./_home/standing";
import { UnitList } from "./_home/unit-list";
import { readCourse } from "./_parts/course/course";
import { SendIfWaiting } from "./_parts/hand-ins/send-if-waiting";
import { LookSwitch } from "./_parts/look/look-switch";
import "./_home/home.css";

export const metadata: Metadata = { title: "Plasterline: draw a set in perspective from its plan" };

/** The course as a drawing register: one press starts the first exercise, nothing to sign up for. */
export default async function Home() {
  const { exercises, broken } = await readCourse();
  const cover = exercises.find((exercise) => exercise.plan.walls.length > 2) ?? exercises[0];
  const catalogue = exercises.map(({ id, title, skills, version, task }) => ({
    id,
    title,
    skills,
    version,
    asked: task.marks.length,
  }));
  return (
    <main className="home">
      <div className="home-look">
        <LookSwitch />
      </div>
      <section className="cover ruled">
        <div className="cover-words">
          <h1 className="cover-title lettering">Plasterline</h1>
          <p className="cover-lead">
            Draw a stage set in one-point perspective from its ground plan. Place each corner by eye, see how far off it
            is on the paper and what that means on the stage, and learn why.
          </p>
          <NextStep catalogue={catalogue} />
          <SendIfWaiting />
          <p className="cover-note">
            Nothing to sign up for. Your work stays in this browser. In a class?{" "}
            <Link href="/class" className="plain-link" prefetch={false}>
              Class
            </Link>{" "}
            has its homework. Drawn one on paper?{" "}
            <Link href="/check" className="plain-link" prefetch={false}>
              Check
            </Link>{" "}
            marks it from a photograph. Teaching?{" "}
            <Link href="/draft" className="plain-link" prefetch={false}>
              Draft
            </Link>{" "}
            makes exercises of plans of your own.
          </p>
        </div>
        {cover && <CoverDrawing exercise={cover} />}
      </section>
      <Standing />
      <UnitList exercises={exercises} />
      {broken.length > 0 && (
        <section className="register ruled">
          <h2 className="lettering">Sheets that cannot be read</h2>
          <ul>
            {broken.map(({ file, problems }) => (
              <li key={file}>
                <code>{file}</code>: {problems[0]?.message} {problems[0]?.where && `(at ${problems[0].where})`}
              </li>
            ))}
          </ul>
        </section>
      )}
      <KeepWork />
    </main>
  );
}
