import type { Store } from "../store/store";
import { type No, no, tooMany } from "./answer";
import type { Auth, SignIn } from "./auth";
import { ACCOUNT_LIMIT, ADDRESS_LIMIT, countTry, forgetTries, giveBack, HERE_LIMIT } from "./tries";

type Proof = { readonly email: string; readonly password: string; readonly address: string };

/** A teacher signs in. */
export async function signIn(
  store: Store,
  auth: Auth,
  { email, password, address }: Proof,
): Promise<({ readonly ok: true } & SignIn) | No<"wrong" | "too-many">> {
  const account = email.trim().toLowerCase();
  return prove(store, { account, address, wrong: "The e-mail address or the password is not right." }, () =>
    auth.signIn(account, password),
  );
}

type Whose = { readonly account: string; readonly address: string; readonly wrong: string };

/**
 * Tries a proof of who someone is, within the limits by account and by address. Each try counts before its outcome is known;
 * a right one is given back, so that a class behind one router does not use up its limit by signing in. A try that one limit
 * stops does not count for the next, so that a single address never uses up what an account has for all.
 */
export async function prove(
  store: Store,
  { account, address, wrong }: Whose,
  attempt: () => Promise<SignIn | undefined>,
): Promise<({ readonly ok: true } & SignIn) | No<"wrong" | "too-many">> {
  const here = `${account}\0${address}`;
  const steps = [
    [HERE_LIMIT, here],
    [ADDRESS_LIMIT, address],
    [ACCOUNT_LIMIT, account],
  ] as const;
  for (const [limit, whose] of steps) {
    const tried = await countTry(store, limit, whose);
    if (!tried.allowed) return tooMany(tried.waitS);
  }
  const signedIn = await attempt();
  if (!signedIn) return no("wrong", wrong);
  await forgetTries(store, HERE_LIMIT, here);
  await forgetTries(store, ACCOUNT_LIMIT, account);
  await giveBack(store, ADDRESS_LIMIT, address);
  return { ok: true, ...signedIn };
}
