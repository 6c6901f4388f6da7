import { resolve } from "node:path";
import { connection } from "next/server";
import { findPerson } from "@/lib/classroom/access/find-person";
import type { Person } from "@/lib/classroom/access/person";
import { type Auth, makeAuth } from "@/lib/classroom/accounts/auth";
import { eraseOldWork } from "@/lib/classroom/accounts/erase";
import { firstRun } from "@/lib/classroom/accounts/first-teacher";
import { cookieSecret, firstRunWord } from "@/lib/classroom/accounts/settings";
import { eraseThrownPlans } from "@/lib/classroom/library/throw-away";
import type { Refusal } from "@/lib/classroom/store/fault";
import { openStore } from "@/lib/classroom/store/open-store";
import type { Store } from "@/lib/classroom/store/store";
import { readClient } from "./client";

export type Classroom = {
  readonly store: Store;
  /** Sessions whose cookies travel by https only, or by either. */
  readonly authFor: (headers: Headers) => Auth;
  readonly whoIs: (headers: Headers) => Promise<Person>;
};

export type Opened =
  | { readonly ok: true; readonly classroom: Classroom }
  | { readonly ok: false; readonly refusal: Refusal };

/** How long a refusal stands before the store is tried again, in milliseconds. */
const TRY_AGAIN_MS = 5000;
const DAY_MS = 24 * 60 * 60 * 1000;

type Kept = { readonly opening: Promise<Opened>; readonly refusedAt: () => number | undefined };

/** Each route is built by itself and would keep a store of its own: the process keeps one for all. */
const process_ = globalThis as typeof globalThis & { plasterlineClassroom?: Kept };

/** The class's store and accounts, opened by the first that asks, or what keeps them shut. */
export async function openClassroom(): Promise<Opened> {
  // The builder draws pages on trial: it must not make a store.
  await connection();
  const kept = process_.plasterlineClassroom;
  const refusedAt = kept?.refusedAt();
  if (kept && (refusedAt === undefined || Date.now() - refusedAt < TRY_AGAIN_MS)) return kept.opening;
  let refused: number | undefined;
  const opening = open().then(
    (opened) => {
      if (!opened.ok) refused = Date.now();
      return opened;
    },
    (error) => {
      refused = 0;
      throw error;
    },
  );
  process_.plasterlineClassroom = { opening, refusedAt: () => refused };
  return opening;
}

async function open(): Promise<Opened> {
  const databaseUrl = process.env.DATABASE_URL || undefined;
  const folder = resolve(/* turbopackIgnore: true */ process.cwd(), process.env.PLASTERLINE_DATA || "data");
  const opening = await openStore({ databaseUrl, folder });
  if (!opening.ok) return opening;
  const { store } = opening;
  const secret = await cookieSecret(store);
  const plain = makeAuth(store, { secret, secure: false });
  const secure = makeAuth(store, { secret, secure: true });
  const authFor = (headers: Headers) => (readClient(headers).secure ? secure : plain);
  if (await firstRun(store))
    console.log(
      `Class has no teacher yet. From another computer, its first page asks for this word: ${await firstRunWord(store)}`,
    );
  const eraseOld = async () => {
    await eraseOldWork(store);
    await eraseThrownPlans(store);
  };
  await eraseOld();
  setInterval(() => void eraseOld().catch(() => {}), DAY_MS).unref();
  const whoIs = (headers: Headers) => findPerson(store, authFor(headers), headers);
  return { ok: true, classroom: { store, authFor, whoIs } };
}
