import { type Auth, makeAuth } from "@/lib/classroom/accounts/auth";
import { makeClass } from "@/lib/classroom/accounts/classes";
import { makeFirstTeacher } from "@/lib/classroom/accounts/first-teacher";
import { type Joined, joinClass } from "@/lib/classroom/accounts/join-class";
import { cookieSecret } from "@/lib/classroom/accounts/settings";
import type { Store } from "@/lib/classroom/store/store";

export const TEACHER = { name: "Ida Brandt", email: "Ida@Tidemill.example", password: "seven tidy gulls" };
export const ROUTER = "203.0.113.7";

export type Room = {
  readonly store: Store;
  readonly auth: Auth;
  readonly teacherId: string;
  readonly code: string;
  readonly classId: string;
};

export async function openRoom(store: Store): Promise<Room> {
  const auth = makeAuth(store, { secret: await cookieSecret(store), secure: false });
  const made = await makeFirstTeacher(store, auth, { ...TEACHER, word: "", address: ROUTER, atTheServer: true });
  if (!made.ok) throw new Error(made.sentence);
  const room = await makeClass(store, made.userId, "First year");
  if (!room.ok) throw new Error(room.sentence);
  return { store, auth, teacherId: made.userId, code: room.code, classId: room.classId };
}

export async function join(
  { store, auth, code }: Room,
  name: string,
  address = ROUTER,
  userId: string | null = null,
): Promise<Joined> {
  const joined = await joinClass(store, auth, { code, name, address, userId });
  if (!joined.ok) throw new Error(joined.sentence);
  return joined;
}

/** Has all tries so far lie a quarter of an hour back. */
export async function passQuarterHour({ db }: Store): Promise<void> {
  const since = new Date(Date.now() - 15 * 60_000).toISOString();
  await db.updateTable("tries").set({ since }).execute();
}

/** What a browser would send back of the cookies it was given. */
export function cookieHeaders(lines: readonly string[]): Headers {
  return new Headers({ cookie: lines.map((line) => line.split(";")[0]).join("; ") });
}
