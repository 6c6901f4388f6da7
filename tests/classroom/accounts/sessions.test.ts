import { expect, it } from "vitest";
import { findPerson } from "@/lib/classroom/access/find-person";
import { makeAuth } from "@/lib/classroom/accounts/auth";
import { SESSION_S } from "@/lib/classroom/accounts/renew-session";
import { cookieSecret } from "@/lib/classroom/accounts/settings";
import type { Store } from "@/lib/classroom/store/store";
import { onBothEngines } from "../engines";
import { cookieHeaders, join, openRoom } from "./room";

const DAY_MS = 24 * 60 * 60 * 1000;

/** Has the sessions run out so many days from now. */
async function leaveDays({ db }: Store, days: number): Promise<void> {
  await db
    .updateTable("session")
    .set({ expiresAt: new Date(Date.now() + days * DAY_MS).toISOString() })
    .execute();
}

async function daysLeft({ db }: Store, token: string): Promise<number> {
  const { expiresAt } = await db
    .selectFrom("session")
    .select("expiresAt")
    .where("token", "=", token)
    .executeTakeFirstOrThrow();
  return (new Date(expiresAt).getTime() - Date.now()) / DAY_MS;
}

/** The token in a session's cookie: what stands before its signature. */
function tokenOf(headers: Headers): string {
  const [, token = ""] = /session_token=([^.;]+)\./.exec(decodeURIComponent(headers.get("cookie") ?? "")) ?? [];
  return token;
}

onBothEngines("sessions", ({ newStore }) => {
  it("last a term after their last use, and longer in the browser than in the store", async () => {
    const room = await openRoom(await newStore());
    const { store, auth } = room;
    const { cookies } = await join(room, "Wim");
    const headers = cookieHeaders(cookies);
    const token = tokenOf(headers);
    expect(SESSION_S).toBe(120 * 24 * 60 * 60);
    expect(await daysLeft(store, token)).toBeCloseTo(120, 1);
    // 400 days is the most that RFC 6265bis lets a browser keep a cookie; from memory.
    expect(cookies.join()).toMatch(/session_token=[^;]+; Max-Age=34560000(;|$)/);

    await leaveDays(store, 2);
    expect(await findPerson(store, auth, headers)).toMatchObject({ kind: "student" });
    expect(await daysLeft(store, token)).toBeCloseTo(120, 1);
    await leaveDays(store, -0.01);
    expect(await findPerson(store, auth, headers)).toEqual({ kind: "nobody" });
  });

  it("are lengthened one by one, and written down at most once a day", async () => {
    const room = await openRoom(await newStore());
    const { store, auth } = room;
    const wim = cookieHeaders((await join(room, "Wim")).cookies);
    const tess = cookieHeaders((await join(room, "Tess")).cookies);
    await leaveDays(store, 119.5);
    await findPerson(store, auth, wim);
    expect(await daysLeft(store, tokenOf(wim))).toBeCloseTo(119.5, 1);
    await leaveDays(store, 60);
    await findPerson(store, auth, wim);
    expect(await daysLeft(store, tokenOf(wim))).toBeCloseTo(120, 1);
    expect(await daysLeft(store, tokenOf(tess))).toBeCloseTo(60, 1);
  });

  it("go on where the store cannot be written just now", async () => {
    const room = await openRoom(await newStore());
    const { store, auth } = room;
    const wim = cookieHeaders((await join(room, "Wim")).cookies);
    await leaveDays(store, 60);
    const full = Object.assign(new Error("database or disk is full"), { code: "SQLITE_FULL" });
    const db = new Proxy(store.db, {
      get: (all, name) => {
        if (name === "updateTable") throw full;
        const value: unknown = Reflect.get(all, name);
        return typeof value === "function" ? value.bind(all) : value;
      },
    });
    const weak = makeAuth({ ...store, db }, { secret: await cookieSecret(store), secure: false });
    expect(await findPerson(store, weak, wim)).toMatchObject({ kind: "student" });
    expect(await daysLeft(store, tokenOf(wim))).toBeCloseTo(60, 1);
    expect(await findPerson(store, auth, wim)).toMatchObject({ kind: "student" });
  });
});
