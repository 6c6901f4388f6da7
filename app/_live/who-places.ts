import { mayDo } from "@/lib/classroom/access/may-do";
import type { Person, Subject } from "@/lib/classroom/access/person";
import { guestOf } from "@/lib/classroom/live/guest-token";

const GUEST_COOKIE = "plasterline-guest";
/** A guest is the same person for a day at school. */
const GUEST_S = 12 * 60 * 60;

/**
 * Whose guess it is: a student of the class is known by their place; anyone else who was let in by a code, by the guest's
 * token in their cookie. Null for who has neither.
 */
export function whoPlaces(headers: Headers, person: Person, subject: Subject, secret: string): string | null {
  if (person.kind === "student" && mayDo(person, "guess", subject))
    return person.places.find(({ classId }) => classId === subject.classId)?.memberId ?? null;
  return guestOf(readCookie(headers, GUEST_COOKIE), secret);
}

/** The line for `Set-Cookie` that makes someone a guest. */
export function guestCookie(token: string, secure: boolean): string {
  return `${GUEST_COOKIE}=${token}; Path=/; HttpOnly; SameSite=Lax; Max-Age=${GUEST_S}${secure ? "; Secure" : ""}`;
}

function readCookie(headers: Headers, name: string): string | undefined {
  const cookies = (headers.get("cookie") ?? "").split(";").map((part) => part.trim());
  return cookies.find((cookie) => cookie.startsWith(`${name}=`))?.slice(name.length + 1);
}
