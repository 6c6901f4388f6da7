"use client";

import Link from "next/link";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { SheetContext } from "@/app/_sheet/sheet-context";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import { createDesk } from "./desk/desk-store";
import { DeskContext, useDesk, useDeskStore, useExercise } from "./desk/draft-context";
import { useUndoKeys } from "./desk/use-undo-keys";
import { draftBounds } from "./draft-bounds";
import { Drawers } from "./drawers";
import { PlansFold } from "./kept/plans-fold";
import { useKeptPlan } from "./kept/use-kept-plan";
import { LegiblePane } from "./layers/legible-pane";
import type { Library } from "./library/library";
import { PicturePane } from "./picture/picture-pane";
import { PlanPane } from "./plan/plan-pane";
import { PlanRow } from "./plan/plan-row";
import { LayingUnder } from "./trace/laying-under";
import { TraceContext, useTrace } from "./trace/trace-context";
import { createTraceDesk } from "./trace/trace-store";
import { useKeptTrace } from "./trace/use-kept-trace";
import "./draft.css";

const useBrowserLayoutEffect = typeof window === "undefined" ? useEffect : useLayoutEffect;

type Props = {
  /** The library of the teacher who drafts; null without a class server, and where nobody is signed in. */
  readonly library: Library | null;
};

/** The drafting desk: a plan that is drawn, the picture that follows it, and what is said about them. */
export function DraftingDesk({ library }: Props) {
  const [store] = useState(() => createDesk("ft-in"));
  const [trace] = useState(createTraceDesk);
  return (
    <DeskContext value={store}>
      <TraceContext value={trace}>
        <Table library={library} />
        <LayingUnder />
      </TraceContext>
    </DeskContext>
  );
}

function Table({ library }: Props) {
  const store = useDeskStore();
  const exercise = useExercise();
  const { scaleRatio } = exercise;
  const bounds = useMemo(() => draftBounds(exercise), [exercise]);
  const [views] = useState(() => createSheetViews(bounds.picture, bounds.plan));
  const sheet = useMemo(() => ({ views, scaleRatio }), [views, scaleRatio]);
  const laid = useRef(bounds);
  const shelved = useKeptPlan();
  const [picture, setPicture] = useState<"out" | "away">("out");
  useKeptTrace(shelved);
  const isLaying = useTrace((trace) => trace.laying !== null);
  useUndoKeys(store);

  // Paper that grows leaves what is looked at where it is.
  useBrowserLayoutEffect(() => {
    if (JSON.stringify(laid.current) === JSON.stringify(bounds)) return;
    laid.current = bounds;
    const { picture: p, plan } = views.getState();
    if (p.factor === 1 && plan.factor === 1) views.getState().lay("never", bounds.picture, bounds.plan);
    else views.setState({ picture: { ...p, bounds: bounds.picture }, plan: { ...plan, bounds: bounds.plan } });
  }, [bounds, views]);

  return (
    <main className="draft-board" data-state={shelved.state} inert={isLaying}>
      <header className="draft-edge">
        <Link href="/" className="plain-link lettering" prefetch={false}>
          Plasterline
        </Link>
        <h1 className="draft-title">{exercise.title}</h1>
        <PlansFold {...shelved} library={library} />
        <LookDisclosure />
      </header>
      {shelved.state === "gone" && (
        <p className="draft-gone" role="status">
          This browser does not let the page keep your plan: it will be gone when you close or reload the page.
        </p>
      )}
      {shelved.parted && (
        <p className="draft-gone" role="status">
          This plan was changed in another tab too. Nothing is lost: what you draw here is now a plan of its own, and
          the other is under Plans as well.
        </p>
      )}
      <SheetContext value={sheet}>
        <div className="draft-sheet ruled" data-picture={picture}>
          <div className="draft-plan">
            <LegiblePane plane="plan">
              <PlanPane />
            </LegiblePane>
            <PlanRow picture={picture} onPicture={setPicture} />
          </div>
          <div className="draft-picture">
            <LegiblePane plane="picture">
              <PicturePane />
            </LegiblePane>
          </div>
          <Drawers plan={shelved.opened} />
        </div>
      </SheetContext>
      <Said />
    </main>
  );
}

/** What was done and where the pencil is, for readers of the screen. */
function Said() {
  const said = useDesk((desk) => desk.said);
  return (
    <p className="aloud" role="status" data-aloud="draft">
      {said}
    </p>
  );
}
