"use client";

import { createContext, useContext } from "react";
import { type StoreApi, useStore } from "zustand";
import type { WorkerDesk } from "@/app/_photo/worker-desk";
import type { Eye } from "./eye-store";

export type EyeRoom = { readonly store: StoreApi<Eye>; readonly worker: WorkerDesk };

export const EyeContext = createContext<EyeRoom | null>(null);

export function useEyeRoom(): EyeRoom {
  const room = useContext(EyeContext);
  if (!room) throw new Error("This part belongs to a picture whose eye is asked for.");
  return room;
}

/** A part that renders again only when that part changes. */
export function useEye<T>(pick: (eye: Eye) => T): T {
  return useStore(useEyeRoom().store, pick);
}
