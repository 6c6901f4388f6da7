import type { Subject } from "../access/person";
import type { Store } from "../store/store";
import { voteSubject } from "./find-vote";

/** A vote stays with its class and its teacher; that a class was erased is noticed after this time, in milliseconds. */
const KNOWN_MS = 10_000;
/** Old entries are let go when there are so many. */
const MANY = 200;

/** Whose class each vote belongs to, asked of the store once in a while instead of with every mark. */
export function makeVoteSubjects(
  store: Store,
  now: () => number = () => performance.now(),
): (voteId: string) => Promise<Subject | undefined> {
  const known = new Map<string, { readonly subject: Promise<Subject | undefined>; readonly until: number }>();
  return (voteId) => {
    const found = known.get(voteId);
    if (found && found.until > now()) return found.subject;
    if (known.size >= MANY) known.clear();
    const subject = voteSubject(store, voteId);
    known.set(voteId, { subject, until: now() + KNOWN_MS });
    // Only what was found is kept: a vote may be opened the next moment, and anyone can ask for votes that are none.
    const forget = () => known.get(voteId)?.subject === subject && known.delete(voteId);
    subject.then((one) => one ?? forget(), forget);
    return subject;
  };
}
