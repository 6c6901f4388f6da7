import type { Store } from "../store/store";
import { type No, no, tooMany } from "./answer";
import type { Auth, SignIn } from "./auth";
import {
  ACCOUNT_LIMIT,
  ADDRESS_LIMIT,
  countTry,
  forgetTries,
  giveBack,
  HERE_LIMIT,
  KNOWN_LIMIT,
  type Limit,
} from "./tries";

/** Where a try comes from: by address, and by the cookies that tell a known browser. */
export type From = { readonly address: string; readonly headers?: Headers };
type Proof = From & { readonly email: string; readonly password: string };

/** A teacher signs in. */
export async function signIn(
  store: Store,
  auth: Auth,
  { email, password, ...from }: Proof,
): Promise<({ readonly ok: true } & SignIn) | No<"wrong" | "too-many">> {
  const account = email.trim().toLowerCase();
  const wrong = "The e-mail address or the password is not right.";
  return prove(store, auth, { account, ...from, wrong }, () => auth.signIn(account, password));
}

type Whose = From & { readonly account: string; readonly wrong: string };

/**
 * Tries a proof of who someone is, within the limits by account and by address. Each try counts before its outcome is known;
 * a right one is given back, so that a class behind one router does not use up its limit by signing in. A try that one limit
 * stops does not count for the next, so that a single address never uses up what an account has for all. A browser that has
 * signed in to the account before has tries of its own: those of a classmate behind the same router do not shut it out.
 */
export async function prove(
  store: Store,
  auth: Pick<Auth, "known">,
  { account, address, headers, wrong }: Whose,
  attempt: () => Promise<SignIn | undefined>,
): Promise<({ readonly ok: true } & SignIn) | No<"wrong" | "too-many">> {
  const known = headers && auth.known(headers, account);
  const limits = known === undefined ? limitsOf(account, address) : ([[KNOWN_LIMIT, known]] as const);
  for (const [limit, whose] of limits) {
    const tried = await countTry(store, limit, whose);
    if (!tried.allowed) return tooMany(tried.waitS);
  }
  const signedIn = await attempt();
  if (!signedIn) return no("wrong", wrong);
  for (const [limit, whose] of limits)
    if (limit === ADDRESS_LIMIT) await giveBack(store, limit, whose);
    else await forgetTries(store, limit, whose);
  return { ok: true, ...signedIn };
}

function limitsOf(account: string, address: string): readonly (readonly [Limit, string])[] {
  return [
    [HERE_LIMIT, `${account}\0${address}`],
    [ADDRESS_LIMIT, address],
    [ACCOUNT_LIMIT, account],
  ];
}
