import { put, type Shelf, take } from "@/app/_parts/kept-work/shelf";
import { addVersion, dropVersion, readVersions, type Version } from "@/lib/draft/exercise-desk/versions";

const VERSIONS_KEY = "plasterline.draft.versions.";

/** The versions kept of a plan, the newest first. */
export function keptVersions(shelf: Shelf | null, plan: string): readonly Version[] {
  return shelf ? readVersions(take(shelf, VERSIONS_KEY + plan)) : [];
}

/** Keeps one more; false when the storage refuses. */
export function keepVersion(shelf: Shelf | null, plan: string, version: Version): boolean {
  return shelf !== null && put(shelf, VERSIONS_KEY + plan, addVersion(keptVersions(shelf, plan), version));
}

/** Forgets them all, with their plan. */
export function forgetVersions(shelf: Shelf, plan: string): void {
  shelf.removeItem(VERSIONS_KEY + plan);
}

export function forgetVersion(shelf: Shelf | null, plan: string, when: string): void {
  if (shelf) put(shelf, VERSIONS_KEY + plan, dropVersion(keptVersions(shelf, plan), when));
}
