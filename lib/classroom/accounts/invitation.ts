import type { Store } from "../store/store";
import { write } from "../store/write";
import { type No, no } from "./answer";
import type { Auth, SignIn } from "./auth";
import { putUser } from "./new-user";
import { NO_WORD, putWord, spendWord, tryWord } from "./one-time-word";
import { cleanName } from "./person-name";

const WEEK_MS = 7 * 24 * 60 * 60 * 1000;

/** A teacher invites another one. `note` is for the list: whom it is meant for. */
export async function invite(
  store: Store,
  teacherId: string,
  note: string,
  now = new Date(),
): Promise<{ readonly ok: true; readonly word: string } | No<never>> {
  const madeBy = teacherId;
  const put = await putWord(
    store,
    { kind: "invitation", madeBy, forUser: null, note: cleanName(note), validMs: WEEK_MS },
    now,
  );
  return put.ok ? { ok: true, word: put.value } : put;
}

type Invited = {
  readonly word: string;
  readonly name: string;
  readonly email: string;
  readonly password: string;
  readonly address: string;
};

/** Makes whoever has an invitation's word a teacher, with no class as yet, and signs them in. */
export async function acceptInvitation(
  store: Store,
  auth: Auth,
  { word, name: written, email, password, address }: Invited,
  now = new Date(),
): Promise<({ readonly ok: true } & SignIn) | No<"no-word" | "no-name" | "email-taken" | "too-many">> {
  const name = cleanName(written);
  if (name === "") return no("no-name", "Write the name that your students know you by.");
  const works = await tryWord(store, "invitation", { word, address }, now);
  if (!works.ok) return works;
  const account = email.trim().toLowerCase();
  const digest = await auth.hash(password);
  const made = await write(store, async (all) => {
    const taken = await all.selectFrom("user").select("id").where("email", "=", account).executeTakeFirst();
    if (taken) return "email-taken";
    const used = await spendWord(all, "invitation", word, now);
    if (!used) return "no-word";
    const userId = await putUser(all, store.engine, { name, email: account, role: "teacher", digest });
    await all.updateTable("one_time_word").set({ for_user: userId }).where("id", "=", used.id).execute();
    return "made";
  });
  if (!made.ok) return made;
  if (made.value === "no-word") return no("no-word", NO_WORD);
  if (made.value === "email-taken")
    return no("email-taken", "A teacher with this e-mail address is here already. Sign in, or write another one.");
  const signedIn = await auth.signIn(account, password);
  if (!signedIn) throw new Error("A teacher who was just made can sign in.");
  return { ok: true, ...signedIn };
}
