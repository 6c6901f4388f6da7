import type { Store } from "../store/store";
import { write } from "../store/write";
import { type No, no, tooMany } from "./answer";
import { cleanCode } from "./as-written";
import type { Auth, SignIn } from "./auth";
import { putUser } from "./new-user";
import { firstRunWord } from "./settings";
import { ADDRESS_LIMIT, countTry, giveBack } from "./tries";

/** The row that can be put in once only: of two who are first at the same moment, one is. */
const DONE = "first-run-done";

/** Whether nobody has made themselves the first teacher yet. */
export async function firstRun({ db }: Store): Promise<boolean> {
  const teacher = await db.selectFrom("user").select("id").where("role", "=", "teacher").limit(1).executeTakeFirst();
  return teacher === undefined;
}

export type FirstTeacher = {
  readonly name: string;
  readonly email: string;
  readonly password: string;
  /** The word from the server's log; whoever sits at the server itself need not know it. */
  readonly word: string;
  readonly address: string;
  readonly atTheServer: boolean;
};

/**
 * Makes the first teacher and signs them in. Everyone in the room can reach the page, so from another computer it takes the
 * word that the server has written in its log.
 */
export async function makeFirstTeacher(
  store: Store,
  auth: Auth,
  { name, email, password, word, address, atTheServer }: FirstTeacher,
): Promise<({ readonly ok: true } & SignIn) | No<"not-first" | "wrong-word" | "too-many">> {
  if (!atTheServer) {
    const tried = await countTry(store, ADDRESS_LIMIT, address);
    if (!tried.allowed) return tooMany(tried.waitS);
    if (cleanCode(word) !== (await firstRunWord(store)))
      return no("wrong-word", "That is not the word. It stands in the window in which Plasterline was started.");
    await giveBack(store, ADDRESS_LIMIT, address);
  }
  const digest = await auth.hash(password);
  const made = await write(store, async (all) => {
    const first = await all
      .insertInto("setting")
      .values({ name: DONE, value: new Date().toISOString() })
      .onConflict((clash) => clash.column("name").doNothing())
      .returning("name")
      .executeTakeFirst();
    if (!first) return false;
    await putUser(all, store.engine, { name, email: email.toLowerCase(), role: "teacher", digest });
    return true;
  });
  if (!made.ok) return made;
  if (!made.value) return no("not-first", "There is a teacher here already. Sign in, or ask them to let you in.");
  const signedIn = await auth.signIn(email, password);
  if (!signedIn) throw new Error("A teacher who was just made can sign in.");
  return { ok: true, ...signedIn };
}
