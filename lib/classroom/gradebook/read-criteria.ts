import { z } from "zod";
import type { Criterion } from "./gradebook";

const CriteriaKept = z.array(z.object({ name: z.string(), points: z.number() }));

/** The teacher's own criteria as the store keeps them; none where they cannot be read. */
export function readCriteria(text: string): readonly Criterion[] {
  try {
    const read = CriteriaKept.safeParse(JSON.parse(text));
    return read.success ? read.data : [];
  } catch {
    return [];
  }
}
