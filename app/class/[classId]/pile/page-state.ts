import type { CheckedDrawing } from "@/app/_photo/checked-drawing";
import { isOpen } from "@/app/_photo/checked-drawing";
import { type Doubt, doubtsOf, type JudgedPage } from "@/lib/classroom/pile/doubts-of";
import type { PagePlace } from "@/lib/classroom/pile/match-page";
import type { SheetWork } from "@/lib/classroom/pile/sheet-works";
import type { Exercise } from "@/lib/exercise/exercise";

/** What the gradebook has of a page. */
export type Taken = { readonly receivedAt: string; readonly late: boolean; readonly score: number | null };

/** A page that was read and belongs to a homework of the class. */
export type ReadPage = PagePlace & {
  readonly at: "read";
  readonly exercise: Exercise;
  readonly works: readonly SheetWork[];
  /** The number printed on the sheet. */
  readonly copy: number | null;
  /** The lines for the name, as the address of a picture. */
  readonly name: string;
  readonly drawing: CheckedDrawing;
  /** Came in late, by the teacher's word. */
  readonly late: boolean;
  /** Where the page stands in the list: the most doubtful first, as they were when they were read. */
  readonly rank: number;
  readonly sending: boolean;
  /** Why the server did not take it. */
  readonly complaint: string | null;
  /** The hand-in it was sent as, so that the same is kept once. */
  readonly sentAs: { readonly id: string; readonly itemId: string; readonly memberId: string } | null;
  readonly taken: Taken | null;
};

export type PageState =
  | { readonly at: "waiting" }
  | { readonly at: "reading"; readonly words: string }
  | {
      readonly at: "unread";
      readonly say: string;
      readonly remedy: string;
      /** The photograph, smaller; null where it could not be opened. */
      readonly photo: string | null;
    }
  | ReadPage;

export type PilePage = {
  readonly id: string;
  /** The file, and of a scan which page. */
  readonly from: string;
  readonly state: PageState;
};

/** Pages whose state is that of a page that was read. */
export type PageRead = PilePage & { readonly state: ReadPage };

export function isRead(page: PilePage): page is PageRead {
  return page.state.at === "read";
}

/** A page as it is judged. */
function judged({ id, state }: PageRead): JudgedPage {
  const { points, doubts } = state.drawing;
  return {
    ...state,
    id,
    openPoints: points.filter(isOpen).length,
    drawnPoints: points.filter(({ at }) => at !== null).length,
    photoDoubts: doubts,
  };
}

/** What has to be looked at on a page, in the company of the others. */
export function pageDoubts(page: PageRead, pages: readonly PilePage[], numbered: boolean): readonly Doubt[] {
  return doubtsOf(judged(page), pages.filter(isRead).map(judged), numbered);
}

/** How far down a page stands: doubtful ones first, then those whose student alone is wanting, then the sure. */
export function rankOf(page: PageRead, numbered: boolean): number {
  const doubts = doubtsOf(judged(page), [], numbered);
  if (doubts.some(({ kind }) => kind !== "no-student")) return 0;
  return doubts.length > 0 ? 1 : 2;
}

/** The pages in the order of the list: what is doubtful first; pages taken last; else as they came. */
export function inOrder(pages: readonly PilePage[]): readonly PageRead[] {
  return pages
    .filter(isRead)
    .map((page, i) => ({ page, i }))
    .sort((a, b) => a.page.state.rank - b.page.state.rank || a.i - b.i)
    .map(({ page }) => page);
}

/** The homework that a page is taken to belong to. */
export function workOf({ works, itemId }: Pick<ReadPage, "works" | "itemId">): SheetWork | undefined {
  return works.find((work) => work.itemId === itemId);
}
