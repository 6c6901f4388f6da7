import { randomBytes } from "node:crypto";
import type { Store } from "../store/store";
import { makeCode } from "./code";

/** What every process of one store must agree on, made by the first that asks. */
async function settled({ db }: Store, name: string, make: () => string): Promise<string> {
  const found = await db.selectFrom("setting").select("value").where("name", "=", name).executeTakeFirst();
  if (found) return found.value;
  await db
    .insertInto("setting")
    .values({ name, value: make() })
    .onConflict((clash) => clash.column("name").doNothing())
    .execute();
  return (await db.selectFrom("setting").select("value").where("name", "=", name).executeTakeFirstOrThrow()).value;
}

/** What the cookies are signed with. It lies with the accounts themselves, and never in the project. */
export function cookieSecret(store: Store): Promise<string> {
  return settled(store, "cookie-secret", () => randomBytes(32).toString("base64url"));
}

/** The word that whoever runs the server reads in its log, and that nobody else in the room knows. */
export function firstRunWord(store: Store): Promise<string> {
  return settled(store, "first-run-word", () => makeCode());
}
