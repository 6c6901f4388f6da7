/** Number of letters to add, drop, change or swap with a neighbour to turn one word into another (optimal string alignment). */
export function editDistance(a: string, b: string): number {
  const width = b.length + 1;
  let [before, above, row] = [
    new Uint32Array(width),
    Uint32Array.from({ length: width }, (_, j) => j),
    new Uint32Array(width),
  ];
  for (let i = 1; i <= a.length; i++) {
    row[0] = i;
    for (let j = 1; j <= b.length; j++) {
      const change = at(above, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let best = Math.min(at(above, j) + 1, at(row, j - 1) + 1, change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, at(before, j - 2) + 1);
      row[j] = best;
    }
    [before, above, row] = [above, row, before];
  }
  return at(above, b.length);
}

function at(numbers: Uint32Array, index: number): number {
  return numbers[index] as number;
}

/** Longest name worth comparing: the work grows with the product of the lengths. */
const LONGEST_NAME = 80;

/** Guesses offered in one list of findings: looking for the nearest of thousands takes time, and nobody reads more. */
export const MOST_GUESSES = 10;

/** The known name nearest to one that was written, letter case aside; null when there are none. */
export function nearestName(written: string, known: Iterable<string>): string | null {
  const word = written.slice(0, LONGEST_NAME).toLowerCase();
  let best: { name: string; steps: number } | null = null;
  for (const name of known) {
    const steps = editDistance(word, name.slice(0, LONGEST_NAME).toLowerCase());
    if (!best || steps < best.steps) best = { name, steps };
  }
  return best?.name ?? null;
}
