import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { acceptInvitation, invite } from "@/lib/classroom/accounts/invitation";
import { keepPlan } from "@/lib/classroom/library/keep-plan";
import type { Store } from "@/lib/classroom/store/store";
import { openRoom, ROUTER, type Room } from "../accounts/room";

const FILE = readFileSync("exercises/walls/01-square-and-parallel.json", "utf8");

/** A plan's text that differs from others by its title. */
export function planText(title: string): string {
  return JSON.stringify({ ...JSON.parse(FILE), title });
}

export const AT = (clock: string) => new Date(`2026-11-10T${clock}:00.000Z`);

export type TwoTeachers = { readonly room: Room; readonly ida: string; readonly bo: string };

export async function twoTeachers(store: Store): Promise<TwoTeachers> {
  const room = await openRoom(store);
  const invited = await invite(store, room.teacherId, "");
  if (!invited.ok) throw new Error(invited.sentence);
  const bo = await acceptInvitation(store, room.auth, {
    name: "Bo Lind",
    email: "bo@tidemill.example",
    password: "eight slow herons",
    word: invited.word,
    address: ROUTER,
  });
  if (!bo.ok) throw new Error(bo.sentence);
  return { room, ida: room.teacherId, bo: bo.userId };
}

/** Keeps a plan that must be kept. */
export async function keep(
  store: Store,
  ownerId: string,
  title: string,
  { planId = randomUUID() as string, base = 0, words = "", clock = "10:00" } = {},
) {
  const kept = await keepPlan(store, { ownerId, planId, base, text: planText(title), words }, AT(clock));
  if (!kept.ok) throw new Error(kept.sentence);
  return { planId, ...kept };
}
