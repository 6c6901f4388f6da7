import type { ColumnType } from "kysely";

type DriversTime = ColumnType<string | Date>;
type DriversYesNo = ColumnType<number | boolean>;

export type UserTable = {
  id: string;
  name: string;
  email: string;
  emailVerified: DriversYesNo;
  image: string | null;
  createdAt: DriversTime;
  updatedAt: DriversTime;
  role: "teacher" | "student";
};

export type SessionTable = {
  id: string;
  expiresAt: DriversTime;
  token: string;
  createdAt: DriversTime;
  updatedAt: DriversTime;
  ipAddress: string | null;
  userAgent: string | null;
  userId: string;
};

export type AccountTable = {
  id: string;
  accountId: string;
  providerId: string;
  userId: string;
  accessToken: string | null;
  refreshToken: string | null;
  idToken: string | null;
  accessTokenExpiresAt: DriversTime | null;
  refreshTokenExpiresAt: DriversTime | null;
  scope: string | null;
  password: string | null;
  createdAt: DriversTime;
  updatedAt: DriversTime;
};

export type VerificationTable = {
  id: string;
  identifier: string;
  value: string;
  expiresAt: DriversTime;
  createdAt: DriversTime;
  updatedAt: DriversTime;
};

export type SettingTable = { name: string; value: string };

/** Tries within a window of time: of a password, a class code. `key` is a digest and tells nobody's name or address. */
export type TriesTable = { key: string; count: number; since: string };

export type OneTimeWordTable = {
  id: string;
  kind: "invitation" | "way-back";
  /** The word itself is kept nowhere. */
  digest: string;
  /** The teacher who made it; null for one that was made at the server. */
  made_by: string | null;
  /** Whose way back it is, or the teacher an invitation has let in. */
  for_user: string | null;
  /** What the one who made it wrote beside it, to know it by. */
  note: string;
  made_at: string;
  expires_at: string;
  used_at: string | null;
};
