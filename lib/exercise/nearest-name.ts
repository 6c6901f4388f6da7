/** Number of letters to add, drop, change or swap with a neighbour to turn one word into another (optimal string alignment). */
export function editDistance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    const above = rows[i - 1] as number[];
    for (let j = 1; j <= b.length; j++) {
      const change = (above[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let best = Math.min((above[j] as number) + 1, (row[j - 1] as number) + 1, change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, ((rows[i - 2] as number[])[j - 2] as number) + 1);
      row.push(best);
    }
    rows.push(row);
  }
  return rows[a.length]?.[b.length] as number;
}

/** Longest name worth comparing: the work grows with the product of the lengths. */
const LONGEST_NAME = 200;

/** Guesses offered in one list of findings: looking for the nearest of thousands takes time, and nobody reads more. */
export const MOST_GUESSES = 20;

/** The known name nearest to one that was written, letter case aside; null when there are none. */
export function nearestName(written: string, known: Iterable<string>): string | null {
  const word = written.slice(0, LONGEST_NAME).toLowerCase();
  let best: { name: string; steps: number } | null = null;
  for (const name of known) {
    const steps = editDistance(word, name.toLowerCase());
    if (!best || steps < best.steps) best = { name, steps };
  }
  return best?.name ?? null;
}
