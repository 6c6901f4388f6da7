/** Lets so many tasks run at a time; the others wait for their turn, first come first served. */
export function takeTurns(most: number): <Value>(task: () => Promise<Value>) => Promise<Value> {
  let running = 0;
  const waiting: (() => void)[] = [];
  return async (task) => {
    if (running < most) running += 1;
    else await new Promise<void>((go) => waiting.push(go));
    try {
      return await task();
    } finally {
      const next = waiting.shift();
      // Whoever goes next takes over the place; nobody can slip in between.
      if (next) next();
      else running -= 1;
    }
  };
}
