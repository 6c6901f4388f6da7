"use client";

import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { PostStore } from "@/app/_parts/hand-ins/post";
import type { SetRoom } from "@/app/_sheet/set-room";
import type { Practice, PracticeStore } from "./attempt-store";
import type { Homework } from "./work-desk";

/** What stays the same through a whole exercise. */
export type PracticeRoom = SetRoom & {
  readonly store: PracticeStore;
  /** Stage metres to paper metres, also where `exercise.scaleRatio` is one that letters are laid out for. */
  readonly paperRatio: number;
  /** The homework it is done for, and what hands it in; null where it is done for oneself. */
  readonly work: { readonly homework: Homework; readonly post: PostStore } | null;
};

export const PracticeContext = createContext<PracticeRoom | null>(null);

export function usePracticeRoom(): PracticeRoom {
  const room = useContext(PracticeContext);
  if (!room) throw new Error("This part belongs inside a practice room.");
  return room;
}

/** A part of the practice that renders again only when that part changes. */
export function usePractice<T>(pick: (practice: Practice) => T): T {
  return useStore(usePracticeRoom().store, pick);
}
