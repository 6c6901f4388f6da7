import type { Store } from "../store/store";
import { write } from "../store/write";
import { type No, no } from "./answer";
import type { Auth, SignIn } from "./auth";
import { changeDigest } from "./new-user";
import { endWaysBack, NO_WORD, putWord, spendWord, tryWord } from "./one-time-word";
import { ACCOUNT_LIMIT, forgetTries } from "./tries";

const HOUR_MS = 60 * 60 * 1000;
/** A colleague may only be met tomorrow. */
const BY_COLLEAGUE_MS = 24 * HOUR_MS;

type Asked = {
  readonly email: string;
  /** The colleague who makes it; null at the server itself. */
  readonly madeBy: string | null;
};

type Made = { readonly ok: true; readonly word: string; readonly name: string };

/** Makes a way back for a teacher who lost the password: for a day by a colleague, for an hour at the server. */
export async function makeWayBack(
  store: Store,
  { email, madeBy }: Asked,
  now = new Date(),
): Promise<Made | No<"nobody" | "yourself">> {
  const teacher = await store.db
    .selectFrom("user")
    .select(["id", "name"])
    .where("email", "=", email.trim().toLowerCase())
    .where("role", "=", "teacher")
    .executeTakeFirst();
  if (!teacher) return no("nobody", "No teacher here has that e-mail address. Look at it once more.");
  // Whoever finds a colleague's computer open must not be able to take the account over from there.
  if (teacher.id === madeBy)
    return no("yourself", "This is your own address. You are signed in, so change your password instead.");
  const validMs = madeBy === null ? HOUR_MS : BY_COLLEAGUE_MS;
  const put = await putWord(store, { kind: "way-back", madeBy, forUser: teacher.id, note: "", validMs }, now);
  return put.ok ? { ok: true, word: put.value, name: teacher.name } : put;
}

type Used = { readonly word: string; readonly password: string; readonly address: string };

/** Gives a teacher who has a way back's word a new password and signs them in; everything opened with the old one ends. */
export async function takeWayBack(
  store: Store,
  auth: Auth,
  { word, password, address }: Used,
  now = new Date(),
): Promise<({ readonly ok: true } & SignIn) | No<"no-word" | "too-many">> {
  const works = await tryWord(store, "way-back", { word, address }, now);
  if (!works.ok) return works;
  const digest = await auth.hash(password);
  const changed = await write(store, async (all) => {
    const userId = (await spendWord(all, "way-back", word, now))?.for_user;
    if (!userId) return undefined;
    await changeDigest(all, userId, digest, now);
    await endWaysBack(all, userId);
    return all.selectFrom("user").select("email").where("id", "=", userId).executeTakeFirstOrThrow();
  });
  if (!changed.ok) return changed;
  if (!changed.value) return no("no-word", NO_WORD);
  const { email } = changed.value;
  await forgetTries(store, ACCOUNT_LIMIT, email);
  const signedIn = await auth.signIn(email, password);
  if (!signedIn) throw new Error("A teacher can sign in with the password just chosen.");
  return { ok: true, ...signedIn };
}
