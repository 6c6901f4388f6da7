import { randomUUID } from "node:crypto";
import { betterAuth } from "better-auth";
import { isAPIError } from "better-auth/api";
import { hashPassword, verifyPassword } from "better-auth/crypto";
import type { Store } from "../store/store";
import { knownBrowser, knownCookie } from "./known-browser";
import { renewSession, SESSION_S } from "./renew-session";
import { takeTurns } from "./take-turns";

/**
 * How long a browser keeps the cookie: as long as any does (RFC 6265bis, draft 22, section 5.5: at most 400 days; from memory).
 * Pages cannot set a cookie while they are drawn, so it is the store that says when a session has not been used for too long.
 */
const COOKIE_S = 400 * 24 * 60 * 60;

/** By NIST SP 800-63B-4 (2025), section 3.1.1.2, at least 8 where there is a second proof; here there is none. */
export const SHORTEST_PASSWORD = 10;
export const LONGEST_PASSWORD = 128;

export type Role = "teacher" | "student";
export type SignedIn = { readonly userId: string; readonly name: string; readonly role: Role };

/** What is asked of the library that keeps the accounts; it answers to no address of its own. */
export type Auth = {
  readonly hash: (password: string) => Promise<string>;
  /** The cookies of a new session; nothing when the two do not belong together. Takes as long either way. */
  readonly signIn: (email: string, password: string) => Promise<SignIn | undefined>;
  readonly whoIs: (headers: Headers) => Promise<SignedIn | undefined>;
  /** What counts the tries of a browser that has signed in to this account before; nothing for any other. */
  readonly known: (headers: Headers, email: string) => string | undefined;
  /** The cookies that end the session, which is gone from the store too. */
  readonly signOut: (headers: Headers) => Promise<readonly string[]>;
};

export type SignIn = {
  readonly userId: string;
  /** Lines for `Set-Cookie`. */
  readonly cookies: readonly string[];
};

/** `secure`: the pages come by https, and the cookie never travels without. `secret` signs the cookies. */
export type AuthOptions = { readonly secret: string; readonly secure: boolean };

/**
 * A password's digest keeps one of the process's four workers busy (`UV_THREADPOOL_SIZE`). A class that joins at once would
 * take them all, and a new line to PostgreSQL, which needs one to prove who we are, would give up waiting.
 */
const DIGESTS_AT_ONCE = 2;

/** The options of the library, which also say what its tables look like. */
export function authOptions({ db, engine }: Pick<Store, "db" | "engine">, { secret, secure }: AuthOptions) {
  const inTurn = takeTurns(DIGESTS_AT_ONCE);
  return {
    secret,
    baseURL: secure ? "https://plasterline.invalid" : "http://plasterline.invalid",
    // One connection is all that SQLite has: a transaction held while a password is digested would keep everyone waiting.
    database: { db, type: engine, transaction: false },
    emailAndPassword: {
      enabled: true,
      minPasswordLength: SHORTEST_PASSWORD,
      maxPasswordLength: LONGEST_PASSWORD,
      password: {
        hash: (password: string) => inTurn(() => hashPassword(password)),
        verify: (sent: { readonly hash: string; readonly password: string }) => inTurn(() => verifyPassword(sent)),
      },
    },
    user: { additionalFields: { role: { type: "string", required: true, input: false } } },
    // We lengthen it ourselves: the library would want to set a cookie with it, and fail where the store cannot be written.
    session: { expiresIn: SESSION_S, disableSessionRefresh: true },
    advanced: {
      cookiePrefix: "plasterline",
      useSecureCookies: secure,
      database: { generateId: () => randomUUID(), validateSchema: false },
      ipAddress: { disableIpTracking: true },
    },
    // Our own limits count by account as well as by address, and know which address to believe.
    rateLimit: { enabled: false },
    // It would log names and e-mail addresses.
    logger: { disabled: true },
    telemetry: { enabled: false },
  } as const;
}

export function makeAuth(store: Store, options: AuthOptions): Auth {
  const library = betterAuth(authOptions(store, options));
  return {
    hash: async (password) => (await library.$context).password.hash(password),
    signIn: async (email, password) => {
      try {
        const { headers, response } = await library.api.signInEmail({ body: { email, password }, returnHeaders: true });
        const known = knownCookie(email.toLowerCase(), options, COOKIE_S);
        return { userId: response.user.id, cookies: [...headers.getSetCookie().map(keptLong), known] };
      } catch (error) {
        if (isAPIError(error) && error.statusCode < 500) return undefined;
        throw error;
      }
    },
    whoIs: async (headers) => {
      const found = await library.api.getSession({ headers });
      if (!found) return undefined;
      await renewSession(store, found.session);
      const { id, name, role } = found.user;
      return { userId: id, name, role: role === "teacher" ? "teacher" : "student" };
    },
    known: (headers, email) => knownBrowser(headers, email, options),
    signOut: async (headers) => {
      const answer = await library.api.signOut({ headers, returnHeaders: true });
      return answer.headers.getSetCookie();
    },
  };
}

/** A session's cookie with the lifetime that the browser shall give it; one that ends a session stays as it is. */
function keptLong(line: string): string {
  return line.replace(`Max-Age=${SESSION_S};`, `Max-Age=${COOKIE_S};`);
}
