import type { Kysely } from "kysely";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import { write } from "../store/write";
import { type No, no } from "./answer";
import { cleanCode, cleanPassphrase } from "./as-written";
import type { Auth, SignIn } from "./auth";
import { changeDigest, putUser, studentEmail } from "./new-user";
import { makePassphrase } from "./passphrase";
import { cleanName, sameName } from "./person-name";
import type { WayBack } from "./private-link";
import { type From, prove } from "./sign-in";

/** Nobody's address: asked for it, the library takes as long to say no as for a wrong passphrase. */
const NOBODY = "nobody@student.invalid";

/** A student comes back from another device, or after signing out, by class, name and passphrase. */
export async function comeBack(
  store: Store,
  auth: Auth,
  { code, name, passphrase, ...from }: WayBack & From,
): Promise<({ readonly ok: true } & SignIn) | No<"wrong" | "too-many">> {
  const email = await findEmail(store, cleanCode(code), name);
  // An account that is not there is limited by what was asked for, so that a limit does not tell who is in a class.
  const account = email ?? `${cleanCode(code)} ${cleanName(name).toLowerCase()}`;
  const wrong = "The class code, the name or the passphrase is not right. Look at each once more.";
  return prove(store, auth, { account, ...from, wrong }, () =>
    auth.signIn(email ?? NOBODY, cleanPassphrase(passphrase)),
  );
}

/** The teacher gives a student who lost theirs a new passphrase; the old one, and what it opened, is over. */
export async function newPassphrase(
  store: Store,
  auth: Auth,
  memberId: string,
): Promise<{ readonly ok: true; readonly passphrase: string; readonly way: WayBack } | No<"not-joined">> {
  const member = await store.db
    .selectFrom("member")
    .innerJoin("class", "class.id", "member.class_id")
    .select(["member.user_id", "member.name", "class.code", "class.teacher_id"])
    .where("member.id", "=", memberId)
    .executeTakeFirst();
  const userId = member?.user_id;
  if (!member || !userId)
    return no("not-joined", "Nobody has joined by this name yet, so there is no passphrase to renew.");
  const passphrase = makePassphrase();
  const digest = await auth.hash(passphrase);
  const changed = await write(store, (all) => renew(all, store, { ...member, memberId, userId }, digest));
  if (!changed.ok) return changed;
  return { ok: true, passphrase, way: { code: member.code, name: member.name, passphrase } };
}

type Renewed = {
  readonly memberId: string;
  readonly userId: string;
  readonly name: string;
  readonly teacher_id: string;
};

/**
 * Whoever holds the new passphrase can see all that the account opens. Where it also opens another teacher's class, this
 * place moves to an account of its own.
 */
async function renew(
  all: Kysely<Tables>,
  { engine }: Store,
  { memberId, userId, name, teacher_id }: Renewed,
  digest: string,
): Promise<void> {
  const elsewhere = await all
    .selectFrom("member")
    .innerJoin("class", "class.id", "member.class_id")
    .select("member.id")
    .where("member.user_id", "=", userId)
    .where("class.teacher_id", "<>", teacher_id)
    .limit(1)
    .executeTakeFirst();
  if (!elsewhere) return changeDigest(all, userId, digest);
  const user_id = await putUser(all, engine, { name, email: studentEmail(), role: "student", digest });
  await all.updateTable("member").set({ user_id }).where("id", "=", memberId).execute();
}

async function findEmail({ db }: Store, code: string, name: string): Promise<string | undefined> {
  const members = await db
    .selectFrom("member")
    .innerJoin("class", "class.id", "member.class_id")
    .innerJoin("user", "user.id", "member.user_id")
    .select(["member.name", "user.email"])
    .where("class.code", "=", code)
    .where("member.removed", "=", 0)
    .execute();
  return members.find((member) => sameName(member.name, name))?.email;
}
