import type { Auth } from "../accounts/auth";
import type { Store } from "../store/store";
import type { Person } from "./person";

/** Who sent a request, by its cookie. */
export async function findPerson({ db }: Store, auth: Auth, headers: Headers): Promise<Person> {
  const found = await auth.whoIs(headers);
  if (!found) return { kind: "nobody" };
  const { userId, name, role } = found;
  if (role === "teacher") return { kind: "teacher", userId, name };
  const places = await db
    .selectFrom("member")
    .select(["id as memberId", "class_id as classId"])
    .where("user_id", "=", userId)
    .where("removed", "=", 0)
    .execute();
  return { kind: "student", userId, name, places };
}
