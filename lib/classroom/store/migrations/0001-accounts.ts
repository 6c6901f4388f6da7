import { sql } from "kysely";
import type { StoreMigration } from "./migration";

/** The tables of the accounts, as the library that keeps them asks for; a test holds them to what it would make itself. */
export const accounts: StoreMigration = {
  name: "0001-accounts",
  up: async (db, engine) => {
    const time = engine === "postgres" ? "timestamptz" : "date";
    const yesNo = engine === "postgres" ? "boolean" : "integer";

    await db.schema
      .createTable("user")
      .addColumn("id", "text", (column) => column.primaryKey().notNull())
      .addColumn("name", "text", (column) => column.notNull())
      .addColumn("email", "text", (column) => column.notNull().unique())
      .addColumn("emailVerified", yesNo, (column) => column.notNull())
      .addColumn("image", "text")
      .addColumn("createdAt", time, (column) =>
        (engine === "postgres" ? column.defaultTo(sql`current_timestamp`) : column).notNull(),
      )
      .addColumn("updatedAt", time, (column) =>
        (engine === "postgres" ? column.defaultTo(sql`current_timestamp`) : column).notNull(),
      )
      .addColumn("role", "text", (column) => column.notNull())
      .execute();

    await db.schema
      .createTable("session")
      .addColumn("id", "text", (column) => column.primaryKey().notNull())
      .addColumn("expiresAt", time, (column) => column.notNull())
      .addColumn("token", "text", (column) => column.notNull().unique())
      .addColumn("createdAt", time, (column) => column.notNull())
      .addColumn("updatedAt", time, (column) => column.notNull())
      .addColumn("ipAddress", "text")
      .addColumn("userAgent", "text")
      .addColumn("userId", "text", (column) => column.notNull().references("user.id").onDelete("cascade"))
      .execute();

    await db.schema
      .createTable("account")
      .addColumn("id", "text", (column) => column.primaryKey().notNull())
      .addColumn("accountId", "text", (column) => column.notNull())
      .addColumn("providerId", "text", (column) => column.notNull())
      .addColumn("userId", "text", (column) => column.notNull().references("user.id").onDelete("cascade"))
      .addColumn("accessToken", "text")
      .addColumn("refreshToken", "text")
      .addColumn("idToken", "text")
      .addColumn("accessTokenExpiresAt", time)
      .addColumn("refreshTokenExpiresAt", time)
      .addColumn("scope", "text")
      .addColumn("password", "text")
      .addColumn("createdAt", time, (column) => column.notNull())
      .addColumn("updatedAt", time, (column) => column.notNull())
      .execute();

    await db.schema
      .createTable("verification")
      .addColumn("id", "text", (column) => column.primaryKey().notNull())
      .addColumn("identifier", "text", (column) => column.notNull())
      .addColumn("value", "text", (column) => column.notNull())
      .addColumn("expiresAt", time, (column) => column.notNull())
      .addColumn("createdAt", time, (column) => column.notNull())
      .addColumn("updatedAt", time, (column) => column.notNull())
      .execute();

    await db.schema.createIndex("session_userId_idx").on("session").column("userId").execute();
    await db.schema.createIndex("account_userId_idx").on("account").column("userId").execute();
    await db.schema.createIndex("verification_identifier_idx").on("verification").column("identifier").execute();
  },
};
