import type { Person, Subject } from "./person";

/** How someone stands to what they ask about. */
export const STANDINGS = [
  "nobody",
  "student-elsewhere",
  "classmate",
  "self-waiting",
  "self",
  "teacher-elsewhere",
  "own-teacher",
] as const;
export type Standing = (typeof STANDINGS)[number];

const OWN: readonly Standing[] = ["own-teacher"];
const TEACHERS: readonly Standing[] = ["teacher-elsewhere", "own-teacher"];
const CLASS: readonly Standing[] = ["classmate", "self-waiting", "self", "own-teacher"];
const DOER: readonly Standing[] = ["self-waiting", "self"];
const SEES_WORK: readonly Standing[] = ["self-waiting", "self", "own-teacher"];
const SEES_RESULT: readonly Standing[] = ["self", "own-teacher"];

/**
 * Who may do what. `self` is the student whose work or place it is; `self-waiting` the same student while results are still
 * kept back; a `classmate` is another student of the class, or any of its students where it is about nobody in particular.
 * What is about no class is asked about `SCHOOL`, or about what a teacher owns in it.
 */
export const MAY = {
  "make-class": TEACHERS,
  "make-plan": TEACHERS,
  "see-plan": OWN,
  "change-plan": OWN,
  "erase-plan": OWN,
  "share-plan": OWN,
  "see-shared-plan": TEACHERS,
  "see-teachers": TEACHERS,
  "invite-teacher": TEACHERS,
  "make-way-back": TEACHERS,
  "withdraw-word": OWN,
  "change-password": OWN,
  "see-class": CLASS,
  "change-class": OWN,
  "erase-class": OWN,
  "export-class": OWN,
  "see-members": OWN,
  "change-members": OWN,
  "export-member": OWN,
  "erase-member": OWN,
  "renew-passphrase": OWN,
  "set-homework": OWN,
  "see-homework": CLASS,
  "do-homework": DOER,
  "hand-in-for": OWN,
  "see-own-marks": SEES_WORK,
  "see-result": SEES_RESULT,
  "see-truth": SEES_RESULT,
  "see-remarks": SEES_RESULT,
  "make-remark": OWN,
  "override-score": OWN,
  "score-criterion": OWN,
  excuse: OWN,
  regrade: OWN,
  "see-gradebook": OWN,
  "see-teach-again": OWN,
  "run-vote": OWN,
  "see-vote": CLASS,
  guess: ["classmate", "self-waiting", "self"],
} as const satisfies Readonly<Record<string, readonly Standing[]>>;

export type Action = keyof typeof MAY;

/** Whether someone may do something; every route asks here before it does anything. */
export function mayDo(person: Person, action: Action, subject: Subject): boolean {
  const allowed: readonly Standing[] = MAY[action];
  return allowed.includes(standingOf(person, subject));
}

export function standingOf(person: Person, { classId, teacherId, memberId, released }: Subject): Standing {
  if (person.kind === "nobody") return "nobody";
  if (person.kind === "teacher") return person.userId === teacherId ? "own-teacher" : "teacher-elsewhere";
  const places = person.places.filter((place) => place.classId === classId);
  if (places.length === 0) return "student-elsewhere";
  if (!places.some((place) => place.memberId === memberId)) return "classmate";
  return released ? "self" : "self-waiting";
}
