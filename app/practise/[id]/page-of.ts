import type { SheetPlace } from "@/app/_parts/course/course-words";
import { keptAddress } from "@/app/_parts/own-exercise/own-address";

/** Where another page has the same exercise; null for one that is in no course and that this browser does not keep. */
export function pageOf(page: string, sheet: SheetPlace, id: string): string | null {
  if (!("own" in sheet)) return `${page}/${id}`;
  return sheet.own === null ? null : keptAddress(`${page}/draft`, sheet.own);
}
