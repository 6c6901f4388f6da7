import { MAX_FILE_BYTES } from "../../exercise/read-json";

/** The most plans of one teacher, those thrown away and not yet erased among them. */
export const MOST_PLANS = 200;

/** The most earlier versions of one plan. One more, and one goes: see `versionsToDrop`. */
export const MOST_VERSIONS = 30;

/**
 * All the plans and versions of one teacher together: some sixty of the largest that is read, and some thousands of the usual
 * ones, which take 5 to 30 kB.
 */
export const MOST_BYTES = 64 * MAX_FILE_BYTES;

/** The longest words beside a plan, letters: as in the versions of the drafting desk. */
export const LONGEST_WORDS = 80;

/** So long after it was thrown away a plan can be taken back. */
export const TAKE_BACK_DAYS = 30;

/** The same in words for the reader. */
export const LIMITS_IN_WORDS = `There is room for ${MOST_PLANS} plans of at most 1 MiB each, for ${MOST_VERSIONS} earlier versions of each, and for 64 MiB in all. Of more versions the oldest that nobody wrote words beside goes first.`;
