import { randomUUID } from "node:crypto";
import type { Kysely } from "kysely";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import type { MemberTable } from "../store/tables/class-tables";
import { write } from "../store/write";
import { type No, no, tooMany } from "./answer";
import { cleanCode } from "./as-written";
import type { Auth } from "./auth";
import { putUser, studentEmail } from "./new-user";
import { makePassphrase } from "./passphrase";
import { cleanName, sameName } from "./person-name";
import { CODE_LIMIT, countTry, giveBack, JOIN_LIMIT } from "./tries";

/** Places in one class; more than any school has, so that nobody fills the disk with names. */
const MOST_MEMBERS = 500;

export type Joining = {
  readonly code: string;
  readonly name: string;
  readonly address: string;
  /** A student who is signed in already takes the new place with the same account. */
  readonly userId: string | null;
};

export type Joined = {
  readonly ok: true;
  readonly memberId: string;
  readonly classId: string;
  readonly name: string;
  readonly code: string;
  /** To come back by from another device; null for a student who has one already. Told once, kept only as a digest. */
  readonly passphrase: string | null;
  /** Lines for `Set-Cookie`. */
  readonly cookies: readonly string[];
};

export type NotJoined = No<"no-class" | "no-name" | "name-taken" | "class-full" | "too-many">;

/** A student joins a class by its code and a name of their choice, or takes the place the teacher's list keeps for it. */
export async function joinClass(
  store: Store,
  auth: Auth,
  { code: written, name: chosen, address, userId }: Joining,
): Promise<Joined | NotJoined> {
  const name = cleanName(chosen);
  if (name === "") return no("no-name", "Write the name that your teacher knows you by.");
  const code = cleanCode(written);
  const classId = await findClass(store, code, address);
  if (typeof classId !== "string") return classId;
  const joining = await countTry(store, JOIN_LIMIT, address);
  if (!joining.allowed) return tooMany(joining.waitS);

  const passphrase = userId === null ? makePassphrase() : null;
  const email = studentEmail();
  const digest = passphrase === null ? null : await auth.hash(passphrase);
  const taken = await write(store, async (all) => {
    const place = await findPlace(all, store, classId, name);
    if ("ok" in place) return place;
    const user = userId ?? (await putUser(all, store.engine, { name, email, role: "student", digest: digest ?? "" }));
    const memberId = await takePlace(all, classId, name, user, place.waiting);
    return { ok: true as const, memberId };
  });
  if (!taken.ok) return taken;
  if (!taken.value.ok) return taken.value;
  const signedIn = passphrase === null ? null : await auth.signIn(email, passphrase);
  return {
    ok: true,
    memberId: taken.value.memberId,
    classId,
    name,
    code,
    passphrase,
    cookies: signedIn?.cookies ?? [],
  };
}

async function findClass(store: Store, code: string, address: string): Promise<string | NotJoined> {
  const tried = await countTry(store, CODE_LIMIT, address);
  if (!tried.allowed) return tooMany(tried.waitS);
  const found = await store.db
    .selectFrom("class")
    .select("id")
    .where("code", "=", code)
    .where("archived", "=", 0)
    .executeTakeFirst();
  if (!found) return no("no-class", "No class has that code. Look at it once more, or ask your teacher.");
  await giveBack(store, CODE_LIMIT, address);
  return found.id;
}

type Place = { readonly waiting: MemberTable | undefined };

/** The place that a name may take: one that waits for it, or a new one. */
async function findPlace(
  all: Kysely<Tables>,
  { engine }: Store,
  classId: string,
  name: string,
): Promise<Place | NotJoined> {
  const ofClass = all.selectFrom("class").select("id").where("id", "=", classId);
  // Two who choose one name at the same moment take turns; SQLite has one writer anyway.
  await (engine === "postgres" ? ofClass.forUpdate() : ofClass).execute();
  const members = await all.selectFrom("member").selectAll().where("class_id", "=", classId).execute();
  const same = members.find((member) => sameName(member.name, name));
  if (same && (same.user_id !== null || same.removed === 1))
    return no(
      "name-taken",
      `Someone in this class is called ${same.name} already. If that is you, come back with your passphrase; else add a letter of your last name.`,
    );
  if (!same && members.length >= MOST_MEMBERS)
    return no("class-full", "This class has no place left. Tell your teacher.");
  return { waiting: same };
}

async function takePlace(
  all: Kysely<Tables>,
  classId: string,
  name: string,
  userId: string,
  waiting: MemberTable | undefined,
): Promise<string> {
  const joined_at = new Date().toISOString();
  if (waiting) {
    await all.updateTable("member").set({ user_id: userId, joined_at }).where("id", "=", waiting.id).execute();
    return waiting.id;
  }
  const id = randomUUID();
  await all
    .insertInto("member")
    .values({ id, class_id: classId, user_id: userId, name, number: null, joined_at, removed: 0 })
    .execute();
  return id;
}
