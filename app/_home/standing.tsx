"use client";

import Link from "next/link";
import { useMemo } from "react";
import { useShelf } from "@/app/_progress/use-shelf";
import { type SkillSummary, summarise } from "@/lib/progress/summarise";

/** Of the shaky skills so many are named here; the record has them all. */
const MOST_SHAKY = 4;

/** What is mastered and what is shaky; nothing before the first exercise is finished. */
export function Standing() {
  const finished = useShelf()?.finished;
  const summary = useMemo(() => finished && summarise(finished, new Date()), [finished]);
  if (!summary || !finished || finished.length === 0) return null;
  const { mastered, shaky } = summary;
  const more = shaky.length - MOST_SHAKY;
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
          <Skills
            title="Shaky"
            skills={shaky.slice(0, MOST_SHAKY)}
            none="Nothing: what you have begun is mastered."
            after={more > 0 ? `and ${more} more in your record` : ""}
          />
          <Skills title="Mastered" skills={mastered} none="Nothing yet. A skill takes three right marks in a row." />
        </div>
      )}
    </section>
  );
}

type SkillsProps = {
  readonly title: string;
  readonly skills: readonly SkillSummary[];
  readonly none: string;
  readonly after?: string;
};

function Skills({ title, skills, none, after = "" }: SkillsProps) {
  return (
    <div>
      <h3 className="small-lettering">{title}</h3>
      {skills.length === 0 && <p>{none}</p>}
      <ul>
        {skills.map(({ id, name, words }) => (
          <li key={id} className="standing-row">
            <span className="standing-name">{name}</span>
            <span className="standing-words">{withoutName(words, name)}</span>
          </li>
        ))}
      </ul>
      {after !== "" && <p className="standing-words">{after}</p>}
    </div>
  );
}

/** The words as they stand beside the name: "Depth by eye is shaky: ..." needs no name twice. */
function withoutName(words: string, name: string): string {
  const rest = words.startsWith(`${name} `) ? words.slice(name.length + 1) : words;
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}
