import type { PagePlace } from "./match-page";
import type { SheetWork } from "./sheet-works";

/** One page of a pile that was read, as far as it decides whether it may be handed in. */
export type JudgedPage = PagePlace & {
  readonly id: string;
  readonly works: readonly SheetWork[];
  /** Points still doubtful or not found, and points that have a place. */
  readonly openPoints: number;
  readonly drawnPoints: number;
  /** What is doubtful about the photograph, in sentences. */
  readonly photoDoubts: readonly string[];
};

export type Doubt = {
  readonly kind:
    | "no-student"
    | "not-set-to"
    | "by-number"
    | "several"
    | "put-away"
    | "twice"
    | "handed-in"
    | "excused"
    | "open-points"
    | "no-points"
    | "photo";
  /** Whether it must be settled first; another is settled by confirming the page itself. */
  readonly blocks: boolean;
  readonly say: string;
};

/**
 * What the teacher has to look at before a page is handed in; nothing where the page is sure. `others` are the pile's other
 * pages, handed in or not; `numbered` says that the sheets were given out by the class list's numbers.
 */
export function doubtsOf(
  page: JudgedPage,
  others: readonly Pick<JudgedPage, "id" | "itemId" | "memberId">[],
  numbered: boolean,
): readonly Doubt[] {
  const { memberId, itemId } = page;
  const work = page.works.find((each) => each.itemId === itemId);
  const doubts: Doubt[] = [];
  const doubt = (kind: Doubt["kind"], say: string, blocks = false) => doubts.push({ kind, say, blocks });
  if (memberId === null) doubt("no-student", "Whose is it? Read the name and choose.", true);
  else {
    if (!work?.memberIds.includes(memberId)) doubt("not-set-to", "The homework was not set to this student.", true);
    if (page.memberBy === "number" && !numbered)
      doubt("by-number", "The student is known by the sheet’s number alone: compare the name.");
    if (others.some((other) => other.id !== page.id && other.itemId === itemId && other.memberId === memberId))
      doubt("twice", "Another page of the pile is the same exercise by the same student.");
    const times = work?.handedIn[memberId] ?? 0;
    if (times > 0)
      doubt("handed-in", `This student has handed it in ${times === 1 ? "once" : `${times} times`} before.`);
    if (work?.excused.includes(memberId)) doubt("excused", "This student is excused from it.");
  }
  if (page.itemBy === "newest") doubt("several", "More than one homework has this exercise; the newest is chosen.");
  if (page.itemBy === "put-away") doubt("put-away", "Only homework that was put away has this exercise.");
  if (page.openPoints > 0)
    doubt("open-points", page.openPoints === 1 ? "1 point to look at." : `${page.openPoints} points to look at.`, true);
  else if (page.drawnPoints === 0) doubt("no-points", "No point is drawn on it.", true);
  for (const say of page.photoDoubts) doubt("photo", say);
  return doubts;
}
