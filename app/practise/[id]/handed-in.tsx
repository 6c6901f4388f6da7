"use client";

import Link from "next/link";
import { useEffect, useRef } from "react";
import { useStore } from "zustand";
import type { Post } from "@/app/_parts/hand-ins/post";
import { WaitingList } from "@/app/_parts/hand-ins/waiting-list";
import { markSetOf } from "@/app/_parts/kept-work/attempt";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { Press, PressLink } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";
import { When } from "@/app/_parts/when";
import { type PracticeRoom, usePractice, usePracticeRoom } from "./practice-context";
import type { Homework } from "./work-desk";

type Work = NonNullable<PracticeRoom["work"]>;

/** The end of homework whose corrections wait: that it is in, or kept, and when there will be more to see. */
export function HandedInPage({ work, finished }: { readonly work: Work; readonly finished: boolean }) {
  const { exercise } = usePracticeRoom();
  const attempt = usePractice((practice) => practice.attempt);
  const { held, dueAt, title } = work.homework;
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus({ preventScroll: true }), []);
  const save = () => {
    const set = markSetOf(attempt, exercise.scale);
    saveFile(`${exercise.id}.marks.json`, `${JSON.stringify(set, null, 2)}\n`);
  };
  return (
    <main className="result">
      <header className="table-edge">
        <Link href="/" className="plain-link lettering" prefetch={false}>
          Plasterline
        </Link>
        <span className="table-title">
          {exercise.title}, {title}
        </span>
        <LookDisclosure />
      </header>
      <div className="handed-in ruled">
        <h1 ref={head} tabIndex={-1} className="lettering">
          {finished ? "Every mark is set down" : "You have done this"}
        </h1>
        <HandInStrip work={work} />
        {held && dueAt && (
          <p>
            Your score and the corrections can be seen here after <When at={dueAt} />.
          </p>
        )}
        <HomeworkPresses work={work} onSave={finished ? save : null} />
      </div>
    </main>
  );
}

/** Whether it is handed in, in a sentence. */
export function HandInStrip({ work: { homework, post } }: { readonly work: Work }) {
  const { memberId, itemId, last } = homework;
  const state = useStore(post);
  if (!state.opened) return null;
  const waiting = waitingOf(state, homework);
  const receipt = state.receiptOf(memberId, itemId) ?? last;
  return (
    <>
      {waiting.length > 0 && <WaitingList post={post} waiting={waiting} />}
      {receipt && !waiting.some(({ refused }) => refused === null) && (
        <p role="status" data-handed-in>
          Handed in at <When at={receipt.receivedAt} />
          {receipt.late && ", after the due date"}.
        </p>
      )}
    </>
  );
}

/** The ways on from homework. */
export function HomeworkPresses({ work, onSave }: { readonly work: Work; readonly onSave: (() => void) | null }) {
  const { store, exercise } = usePracticeRoom();
  const state = useStore(work.post);
  const left = attemptsLeft(state, work.homework);
  return (
    <div className="result-presses">
      <PressLink href="/class" weight="main">
        To your class
      </PressLink>
      {(left === null || left > 0) && (
        <Press onClick={() => store.getState().again()}>
          {exercise.task.kind === "picture-to-plan" ? "Read it again" : "Draw it again"}
          {left !== null && (left === 1 ? ", once more" : `, ${left} attempts left`)}
        </Press>
      )}
      {onSave && <Press onClick={onSave}>Save the marks</Press>}
    </div>
  );
}

function waitingOf({ waiting }: Post, { itemId, memberId }: Homework): Post["waiting"] {
  return waiting.filter((each) => each.itemId === itemId && each.memberId === memberId);
}

/** Null for any number. What waits will use attempts up. */
function attemptsLeft(state: Post, homework: Homework): number | null {
  if (homework.attemptsLeft === null) return null;
  const said = state.receipts[homework.itemId]?.attemptsLeft ?? homework.attemptsLeft;
  const waiting = waitingOf(state, homework).filter(({ refused }) => refused === null);
  return Math.max(0, Math.min(said, homework.attemptsLeft) - waiting.length);
}
