/** A pivot below this share of the largest entry: the equations do not say enough. */
const SINGULAR = 1e-13;

/** Solves `matrix` x = `right` by elimination with row pivots; null where it has no one answer. */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | null {
  const rows = matrix.map((row, i) => [...row, right[i] as number]);
  const size = Math.max(...matrix.flat().map(Math.abs));
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    let pivot = i;
    for (let k = i + 1; k < n; k++) if (Math.abs(rows[k]?.[i] ?? 0) > Math.abs(rows[pivot]?.[i] ?? 0)) pivot = k;
    const head = rows[pivot] as number[];
    if (!(Math.abs(head[i] as number) > SINGULAR * size)) return null;
    rows[pivot] = rows[i] as number[];
    rows[i] = head;
    for (let k = i + 1; k < n; k++) {
      const row = rows[k] as number[];
      const share = (row[i] as number) / (head[i] as number);
      for (let j = i; j <= n; j++) row[j] = (row[j] as number) - share * (head[j] as number);
    }
  }
  const answer = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i] as number[];
    let rest = row[n] as number;
    for (let j = i + 1; j < n; j++) rest -= (row[j] as number) * (answer[j] as number);
    answer[i] = rest / (row[i] as number);
  }
  return answer.every(Number.isFinite) ? answer : null;
}
