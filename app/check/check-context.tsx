"use client";

import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { PostStore } from "@/app/_parts/hand-ins/post";
import type { WorkerDesk } from "@/app/_photo/worker-desk";
import type { Check, CheckStore } from "./check-store";

/** Homework that a drawing can be handed in for. */
export type Due = {
  readonly itemId: string;
  readonly memberId: string;
  readonly exerciseId: string;
  /** The homework's title. */
  readonly title: string;
  readonly attemptsLeft: number | null;
};

/** The homework that the page was opened from. */
export type Homework = Due & {
  /** Corrections and scores are not shown yet. */
  readonly held: boolean;
  readonly dueAt: string | null;
  readonly last: { readonly receivedAt: string; readonly late: boolean } | null;
};

/** An exercise of the course, to be chosen for a drawing on other paper. */
export type Listed = { readonly id: string; readonly title: string; readonly unit: string };

/** What stays the same while a photograph is worked on. */
export type CheckRoom = {
  readonly store: CheckStore;
  readonly worker: WorkerDesk;
  readonly post: PostStore;
  readonly homework: Homework | null;
  readonly due: readonly Due[];
};

export const CheckContext = createContext<CheckRoom | null>(null);

export function useCheckRoom(): CheckRoom {
  const room = useContext(CheckContext);
  if (!room) throw new Error("This part belongs inside a check.");
  return room;
}

/** A part that renders again only when that part of the check changes. */
export function useCheck<T>(pick: (check: Check) => T): T {
  return useStore(useCheckRoom().store, pick);
}
