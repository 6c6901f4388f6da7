import { randomUUID } from "node:crypto";
import type { Kysely } from "kysely";
import type { Engine } from "../store/store";
import type { Tables } from "../store/tables";
import type { Role } from "./auth";

type NewUser = { readonly name: string; readonly email: string; readonly role: Role; readonly digest: string };

/** The library's name for an account that is proved by a password. */
const BY_PASSWORD = "credential";

/** A student's address: it is unique, and no letter can ever reach it. */
export function studentEmail(): string {
  return `${randomUUID()}@student.invalid`;
}

/** Puts a person and the digest of their password in, as the library does it, within the caller's transaction. */
export async function putUser(
  all: Kysely<Tables>,
  engine: Engine,
  { name, email, role, digest }: NewUser,
  now = new Date(),
): Promise<string> {
  const id = randomUUID();
  const at = { createdAt: now.toISOString(), updatedAt: now.toISOString() };
  const emailVerified = engine === "postgres" ? false : 0;
  await all
    .insertInto("user")
    .values({ id, name, email, emailVerified, image: null, ...at, role })
    .execute();
  await all
    .insertInto("account")
    .values({
      id: randomUUID(),
      accountId: id,
      providerId: BY_PASSWORD,
      userId: id,
      accessToken: null,
      refreshToken: null,
      idToken: null,
      accessTokenExpiresAt: null,
      refreshTokenExpiresAt: null,
      scope: null,
      password: digest,
      ...at,
    })
    .execute();
  return id;
}

/** Gives a person another password, and ends what was opened with the old one. */
export async function changeDigest(
  all: Kysely<Tables>,
  userId: string,
  digest: string,
  now = new Date(),
): Promise<void> {
  await all
    .updateTable("account")
    .set({ password: digest, updatedAt: now.toISOString() })
    .where("userId", "=", userId)
    .where("providerId", "=", BY_PASSWORD)
    .execute();
  await all.deleteFrom("session").where("userId", "=", userId).execute();
}
