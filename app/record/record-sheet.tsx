"use client";

import { type ReactNode, useMemo } from "react";
import { useShelf } from "@/app/_parts/kept-work/use-shelf";
import { PressLink } from "@/app/_parts/press";
import { errorSeries } from "@/lib/progress/error-series";
import { habitHistory } from "@/lib/progress/habit-history";
import type { AttemptRecord } from "@/lib/progress/record";
import { summarise } from "@/lib/progress/summarise";
import { ErrorsSection } from "./errors-section";
import { HabitsSection } from "./habits-section";
import { spanOf } from "./lay-out-chart";
import { RatioSection } from "./ratio-section";
import type { Catalogue } from "./record-words";
import { SkillsSection } from "./skills-section";

/** The whole record on one sheet of paper. */
export function RecordSheet({ catalogue }: { readonly catalogue: Catalogue }) {
  const shelf = useShelf();
  return (
    <div className="record-sheet ruled">
      <div className="record-title">
        <h1 className="lettering">Your record</h1>
        <p>Kept in this browser only. Save a copy of it on the first page.</p>
      </div>
      {shelf && <Kept finished={shelf.finished} keeping={shelf.keeping} catalogue={catalogue} />}
    </div>
  );
}

type KeptProps = {
  readonly finished: readonly AttemptRecord[];
  readonly keeping: boolean;
  readonly catalogue: Catalogue;
};

function Kept({ finished, keeping, catalogue }: KeptProps) {
  const all = useMemo(() => {
    const now = new Date();
    return { summary: summarise(finished, now), series: errorSeries(finished), habits: habitHistory(finished, now) };
  }, [finished]);
  if (!keeping)
    return (
      <Empty>
        This browser does not let the page keep anything, perhaps because of a private window or a setting, so there is
        no record to show.
      </Empty>
    );
  if (finished.length === 0)
    return (
      <Empty action={catalogue[0] && { href: `/practise/${catalogue[0].id}`, words: `Start: ${catalogue[0].title}` }}>
        Nothing is drawn yet. Finish an exercise, and here you see which skills its marks speak for, how far off they
        were, and whether an error is a habit.
      </Empty>
    );
  if (finished.every(({ marks }) => marks.length === 0))
    return (
      <Empty action={{ href: "/", words: "To the list of exercises" }}>
        Of the exercises you have finished only the scores were kept, and those stand in the list. Finish another one:
        from then on every mark is kept, and this sheet fills.
      </Empty>
    );
  const span = spanOf(all.series);
  return (
    <>
      <SkillsSection summary={all.summary} />
      <ErrorsSection series={all.series} span={span} catalogue={catalogue} />
      <RatioSection series={all.series} span={span} catalogue={catalogue} />
      <HabitsSection habits={all.habits} span={span} />
    </>
  );
}

type EmptyProps = {
  readonly children: ReactNode;
  readonly action?: { readonly href: string; readonly words: string } | undefined;
};

function Empty({ children, action }: EmptyProps) {
  return (
    <section className="record-empty">
      <p>{children}</p>
      {action && (
        <PressLink href={action.href} weight="main">
          {action.words}
        </PressLink>
      )}
    </section>
  );
}
