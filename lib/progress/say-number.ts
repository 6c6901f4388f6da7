const WORDS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

export const DAY_MS = 24 * 60 * 60 * 1000;

/** Weeks and months are told from here on, days. */
const WEEKS_FROM = 14;
const MONTHS_FROM = 61;
const MONTH_DAYS = 30.44;

/** A count in words as far as twelve, then in figures; 0 is "no". */
export function sayCount(count: number): string {
  return WORDS[count] ?? String(count);
}

/** "one mark", "five marks". */
export function sayMany(count: number, one: string): string {
  return `${sayCount(count)} ${one}${count === 1 ? "" : "s"}`;
}

/** A span of time in whole days, weeks or months: "nine days". Less than a day is "less than a day". */
export function saySpan(ms: number): string {
  const days = Math.floor(ms / DAY_MS);
  if (days < 1) return "less than a day";
  if (days < WEEKS_FROM) return sayMany(days, "day");
  if (days < MONTHS_FROM) return sayMany(Math.floor(days / 7), "week");
  return sayMany(Math.floor(days / MONTH_DAYS), "month");
}

/** How long ago: "today" within a day, else "nine days ago". A moment still to come, of a clock put back, is today. */
export function sayAgo(ms: number): string {
  return ms < DAY_MS ? "today" : `${saySpan(ms)} ago`;
}
