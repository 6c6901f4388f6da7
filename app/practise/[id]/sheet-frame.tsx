"use client";

import Link from "next/link";
import { type ReactNode, useEffect, useLayoutEffect, useMemo, useRef } from "react";
import type { SheetPlace } from "@/app/_parts/course/course-words";
import { LookDisclosure, LookSwitch } from "@/app/_parts/look/look-switch";
import { planeOf } from "@/app/_sheet/plane-of";
import { sameWidth } from "@/app/_sheet/sheet-bounds";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { Grade } from "@/lib/grading/grade";
import { pageOf } from "./page-of";
import { usePractice, usePracticeRoom } from "./practice-context";
import { TitleBlock } from "./title-block";
import { useLayout } from "./use-layout";

const useBrowserLayoutEffect = typeof window === "undefined" ? useEffect : useLayoutEffect;

/** The table's edge and the sheet on it: border, the places of the drawings, the title block. */
export function SheetFrame({
  sheet,
  grade,
  otherAway,
  children,
}: {
  readonly sheet: SheetPlace;
  readonly grade: Grade;
  /** On a narrow sheet the drawing that is not marked can be put away. */
  readonly otherAway: boolean;
  readonly children: ReactNode;
}) {
  const { bounds, exercise, work } = usePracticeRoom();
  const { views } = useSheet();
  const keeping = usePractice((practice) => practice.keeping);
  const opened = usePractice((practice) => practice.opened);
  const plane = planeOf(exercise);
  const printed = pageOf("/sheet", sheet, exercise.id);
  const frame = useRef<HTMLDivElement>(null);
  const { layout, narrow, phone, change } = useLayout(frame, bounds, plane);

  const laid = useMemo(() => (layout === "stacked" && !phone ? sameWidth(bounds) : bounds), [layout, phone, bounds]);
  useBrowserLayoutEffect(() => {
    views
      .getState()
      .lay(layout === "beside" || phone ? "never" : narrow ? "if-room" : "always", laid.picture, laid.plan);
  }, [layout, narrow, phone, laid, views]);

  const [pictureHigh, planHigh] = [laid.picture.top - laid.picture.bottom, laid.plan.top - laid.plan.bottom];
  const wide = laid.picture.right - laid.picture.left;
  return (
    <main className="board">
      <header className="table-edge">
        <Link href="/" className="plain-link lettering" prefetch={false}>
          Plasterline
        </Link>
        <h1 className="table-title">{exercise.title}</h1>
        {!narrow && (
          <button
            type="button"
            className="plain-link text-sm"
            onClick={() => change(layout === "beside" ? "stacked" : "beside")}
          >
            Put the plan {layout === "beside" ? "under" : "beside"} the picture
          </button>
        )}
        {work && (
          <Link href="/class" className="plain-link text-sm" prefetch={false}>
            Your class
          </Link>
        )}
        {!phone && !work && printed !== null && (
          <Link href={printed} className="plain-link text-sm" prefetch={false}>
            Print this sheet
          </Link>
        )}
        {narrow ? <LookDisclosure /> : <LookSwitch />}
      </header>
      {!keeping && (
        <p className="table-note" role="status">
          This browser does not let the page keep your work: it will be gone when you close or reload the page.
        </p>
      )}
      <div
        ref={frame}
        className="sheet ruled"
        data-opened={opened}
        data-layout={narrow ? "narrow" : layout}
        data-marks={plane}
        data-plan={narrow && otherAway && plane === "picture" ? "away" : "out"}
        data-picture={narrow && otherAway && plane === "plan" ? "away" : "out"}
        style={
          {
            "--picture-share": `${pictureHigh}fr`,
            "--plan-share": `${planHigh}fr`,
            "--picture-shape": `${wide / pictureHigh}`,
          } as React.CSSProperties
        }
      >
        {children}
        <TitleBlock sheet={sheet} grade={grade} />
      </div>
    </main>
  );
}
