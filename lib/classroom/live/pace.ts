/** A mark that is dragged is sent when it rests; nobody sets down more than this in a second. */
export const MOST_GUESSES_A_SECOND = 5;
const WINDOW_MS = 1000;
/** Old entries are swept when there are so many. */
const MANY = 5000;

export type Pace = {
  /** Whether one more may be taken from someone now; it is counted if so. */
  readonly take: (person: string, nowMs: number) => boolean;
};

/** Counts what each person sends within a second, in this process. */
export function makePace(most = MOST_GUESSES_A_SECOND): Pace {
  const times = new Map<string, readonly number[]>();
  return {
    take: (person, nowMs) => {
      if (times.size > MANY)
        for (const [each, [newest = 0]] of times) if (newest <= nowMs - WINDOW_MS) times.delete(each);
      const recent = (times.get(person) ?? []).filter((time) => time > nowMs - WINDOW_MS);
      if (recent.length >= most) return false;
      times.set(person, [nowMs, ...recent]);
      return true;
    },
  };
}
