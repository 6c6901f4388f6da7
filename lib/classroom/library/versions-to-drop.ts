import type { PlanVersionTable } from "../store/tables/plan-tables";
import { MOST_VERSIONS } from "./library-limits";

type Version = Readonly<Pick<PlanVersionTable, "id" | "at" | "words" | "beside">>;

/**
 * Those of a plan's versions that go so that at most `most` stay: the oldest first of those that nobody wrote words beside and
 * that were the plan once; only then the oldest of the others.
 */
export function versionsToDrop(versions: readonly Version[], most = MOST_VERSIONS): readonly string[] {
  const spare = Math.max(0, versions.length - most);
  const oldestFirst = [...versions].sort((a, b) => (a.at < b.at || (a.at === b.at && a.id < b.id) ? -1 : 1));
  const plain = oldestFirst.filter(isPlain);
  return [...plain, ...oldestFirst.filter((version) => !isPlain(version))].slice(0, spare).map(({ id }) => id);
}

function isPlain({ words, beside }: Version): boolean {
  return words === "" && beside === 0;
}
