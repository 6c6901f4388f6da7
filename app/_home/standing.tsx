"use client";

import Link from "next/link";
import { useMemo } from "react";
import { sayBeside } from "@/app/_parts/kept-work/say-beside";
import { useShelf } from "@/app/_parts/kept-work/use-shelf";
import { type SkillSummary, summarise } from "@/lib/progress/summarise";

/** Of each kind so many are named here, those to be practised first; the record has them all. */
const MOST_NAMED = 4;

/** What is mastered and what is shaky; nothing before the first exercise is finished. */
export function Standing() {
  const finished = useShelf()?.finished;
  const summary = useMemo(() => finished && summarise(finished, new Date()), [finished]);
  if (!summary || !finished || finished.length === 0) return null;
  const { mastered, shaky } = summary;
  return (
    <section className="register ruled" aria-labelledby="standing">
      <header className="register-head">
        <h2 id="standing" className="lettering">
          Where you stand
        </h2>
        <p>{summary.words}</p>
        <Link href="/record" prefetch={false} className="plain-link standing-link">
          Your whole record
        </Link>
      </header>
      {mastered.length + shaky.length === 0 ? (
        <p className="standing-none">
          Of the exercises you have finished only the scores were kept. From the next one on, every mark counts here.
        </p>
      ) : (
        <div className="standing">
          <Skills title="Shaky" skills={shaky} none="Nothing: what you have begun is mastered." />
          <Skills
            title="Mastered"
            skills={mastered}
            none="Nothing yet. It takes three right marks in a row, or more."
          />
        </div>
      )}
    </section>
  );
}

type SkillsProps = {
  readonly title: string;
  readonly skills: readonly SkillSummary[];
  readonly none: string;
};

function Skills({ title, skills, none }: SkillsProps) {
  const more = skills.length - MOST_NAMED;
  return (
    <div>
      <h3 className="small-lettering">{title}</h3>
      {skills.length === 0 && <p>{none}</p>}
      <ul>
        {skills.slice(0, MOST_NAMED).map(({ id, name, words }) => (
          <li key={id} className="standing-row">
            <span className="standing-name">{name}</span>
            <span className="standing-words">{sayBeside(words, name)}</span>
          </li>
        ))}
      </ul>
      {more > 0 && <p className="standing-words">and {more} more in your record</p>}
    </div>
  );
}
