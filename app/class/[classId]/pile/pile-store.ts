import { createStore, type StoreApi } from "zustand/vanilla";
import type { CheckedDrawing } from "@/app/_photo/checked-drawing";
import { matchStudent, type PileStudent } from "@/lib/classroom/pile/match-page";
import { isRead, type PageRead, type PageState, type PilePage, pageDoubts, type ReadPage, workOf } from "./page-state";

export type Pile = {
  readonly students: readonly PileStudent[];
  readonly pages: readonly PilePage[];
  /** The sheets were given out by the class list's numbers. */
  readonly numbered: boolean;
  /** The page that is looked at. */
  readonly looking: string | null;
  readonly put: (pages: readonly PilePage[]) => void;
  readonly show: (id: string, state: PageState) => void;
  readonly takeOut: (id: string) => void;
  readonly look: (id: string | null) => void;
  readonly byNumber: (numbered: boolean) => void;
  readonly chooseStudent: (id: string, memberId: string | null) => void;
  readonly chooseItem: (id: string, itemId: string) => void;
  readonly callLate: (id: string, late: boolean) => void;
  /** Its readings after a step at the board. */
  readonly change: (id: string, drawing: CheckedDrawing) => void;
  /** How sending it goes. */
  readonly settle: (id: string, part: Partial<ReadPage>) => void;
};

export type PileStore = StoreApi<Pile>;

/** The pile under way: pure steps on its pages. It lasts as long as the page; nothing of it is kept. Knows no React. */
export function createPile(students: readonly PileStudent[]): PileStore {
  return createStore<Pile>((set, get) => {
    const map = (id: string, made: (page: PilePage) => PilePage) =>
      set({ pages: get().pages.map((page) => (page.id === id ? made(page) : page)) });
    const part = (id: string, made: (state: ReadPage) => Partial<ReadPage>) =>
      map(id, (page) =>
        isRead(page) && page.state.taken === null
          ? { ...page, state: { ...page.state, complaint: null, ...made(page.state) } }
          : page,
      );
    return {
      students,
      pages: [],
      numbered: false,
      looking: null,
      put: (pages) => set({ pages: [...get().pages, ...pages] }),
      show: (id, state) => map(id, (page) => ({ ...page, state })),
      takeOut: (id) => {
        for (const { state } of get().pages.filter((page) => page.id === id)) forget(state);
        set({ pages: get().pages.filter((page) => page.id !== id), looking: null });
      },
      look: (looking) => set({ looking }),
      byNumber: (numbered) => set({ numbered }),
      chooseStudent: (id, memberId) => part(id, () => ({ memberId, memberBy: memberId === null ? null : "teacher" })),
      chooseItem: (id, itemId) =>
        part(id, (state) => {
          const work = workOf({ ...state, itemId });
          if (!work) return {};
          // What the teacher read on the sheet stays read, whichever homework it is for.
          const whose = state.memberBy === "teacher" ? {} : matchStudent(work, state.copy, get().students);
          return { itemId, itemBy: "teacher", ...whose };
        }),
      callLate: (id, late) => part(id, () => ({ late })),
      change: (id, drawing) => part(id, () => ({ drawing })),
      settle: (id, changed) => part(id, () => changed),
    };
  });
}

/** Pages that nothing is doubtful about, and that are not in the gradebook yet. */
export function surePages({ pages, numbered }: Pick<Pile, "pages" | "numbered">): readonly PageRead[] {
  return pages.filter(
    (page): page is PageRead =>
      isRead(page) &&
      page.state.taken === null &&
      !page.state.sending &&
      pageDoubts(page, pages, numbered).length === 0,
  );
}

/** Gives the memory of a page's pictures back. */
export function forget(state: PageState): void {
  if (state.at === "unread" && state.photo !== null) URL.revokeObjectURL(state.photo);
  if (state.at !== "read") return;
  URL.revokeObjectURL(state.name);
  URL.revokeObjectURL(state.drawing.picture);
}
