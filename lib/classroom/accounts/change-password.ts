import type { Store } from "../store/store";
import { write } from "../store/write";
import type { No } from "./answer";
import type { Auth, SignIn } from "./auth";
import { changeDigest } from "./new-user";
import { endWaysBack } from "./one-time-word";
import { type From, signIn } from "./sign-in";

type Change = From & { readonly userId: string; readonly old: string; readonly password: string };

/** A teacher who knows the old password chooses another. Other browsers are signed out; this one has the new cookies. */
export async function changePassword(
  store: Store,
  auth: Auth,
  { userId, old, password, ...from }: Change,
): Promise<({ readonly ok: true } & SignIn) | No<"wrong" | "too-many">> {
  const { email } = await store.db
    .selectFrom("user")
    .select("email")
    .where("id", "=", userId)
    .executeTakeFirstOrThrow();
  // The session that this opens ends with all the others below.
  const proved = await signIn(store, auth, { email, password: old, ...from });
  if (!proved.ok) return proved.reason === "wrong" ? { ...proved, sentence: "The old password is not right." } : proved;
  const digest = await auth.hash(password);
  const changed = await write(store, async (all) => {
    await changeDigest(all, userId, digest);
    await endWaysBack(all, userId);
  });
  if (!changed.ok) return changed;
  const signedIn = await auth.signIn(email, password);
  if (!signedIn) throw new Error("A teacher can sign in with the password just chosen.");
  return { ok: true, ...signedIn };
}
