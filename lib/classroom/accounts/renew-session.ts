import { faultOf } from "../store/fault";
import type { Store } from "../store/store";

const DAY_S = 24 * 60 * 60;
/** A term: how long a session lasts after its last use. */
export const SESSION_S = 120 * DAY_S;
/** Once a day is often enough to note that it is used. */
const NOTED_S = DAY_S;

type Session = { readonly token: string; readonly expiresAt: Date };

/** Lengthens a session that is being used. A store that cannot be written just now leaves it as it is. */
export async function renewSession({ db }: Store, { token, expiresAt }: Session, now = new Date()): Promise<void> {
  const whole = now.getTime() + SESSION_S * 1000;
  if (expiresAt.getTime() > whole - NOTED_S * 1000) return;
  try {
    await db
      .updateTable("session")
      .set({ expiresAt: new Date(whole).toISOString(), updatedAt: now.toISOString() })
      .where("token", "=", token)
      .execute();
  } catch (error) {
    if (!faultOf(error)) throw error;
  }
}
