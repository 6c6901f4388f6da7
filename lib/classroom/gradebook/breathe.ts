/** Lets whatever else waits have its turn: a student handing in must not wait until a whole class is graded. */
export function breathe(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
