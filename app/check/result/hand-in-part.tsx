"use client";

import { useStore } from "zustand";
import { WaitingList } from "@/app/_parts/hand-ins/waiting-list";
import { Press } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import type { CheckedDrawing } from "@/app/_photo/checked-drawing";
import type { Exercise } from "@/lib/exercise/exercise";
import { type Due, useCheckRoom } from "../check-context";
import { useHandIn } from "../use-finish";

type Props = { readonly exercise: Exercise; readonly drawing: CheckedDrawing };

/** Hands the drawing in for the homework it was done for, or that asks for this exercise; nothing for anyone else. */
export function HandInPart({ exercise, drawing }: Props) {
  const { post, homework, due } = useCheckRoom();
  const state = useStore(post);
  const handIn = useHandIn(exercise);
  const works: readonly Due[] = homework ? [homework] : due.filter(({ exerciseId }) => exerciseId === exercise.id);
  if (works.length === 0 || !state.opened) return null;
  const mine = state.waiting.filter(({ id }) => id === drawing.handedIn);
  const work = works.find(({ itemId }) => state.receipts[itemId] !== undefined);
  const receipt = drawing.handedIn === null ? null : receiptFor(works, state, drawing.handedIn);
  return (
    <div className="check-hand-in">
      {mine.length > 0 && <WaitingList post={post} waiting={mine} />}
      {receipt && mine.length === 0 && (
        <p role="status" data-handed-in>
          Handed in{work ? ` for “${work.title}”` : ""} at <When at={receipt.receivedAt} />
          {receipt.late && ", after the due date"}.
        </p>
      )}
      {drawing.ownEye !== null && <p>For homework it is marked for the exercise’s own eye.</p>}
      {drawing.handedIn === null &&
        works.map((each) =>
          each.attemptsLeft === 0 ? (
            <p key={each.itemId}>You have used all attempts at “{each.title}”.</p>
          ) : (
            <Press key={each.itemId} weight="main" onClick={() => handIn(each)}>
              Hand it in for “{each.title}”
            </Press>
          ),
        )}
    </div>
  );
}

function receiptFor(
  works: readonly Due[],
  state: ReturnType<ReturnType<typeof useCheckRoom>["post"]["getState"]>,
  id: string,
) {
  return (
    works.map(({ memberId, itemId }) => state.receiptOf(memberId, itemId)).find((receipt) => receipt?.id === id) ?? null
  );
}
