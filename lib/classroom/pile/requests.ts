import { z } from "zod";
import { HandInRequest } from "../homework/requests";

/** What the page of a pile sends. */
export const FindSheetRequest = z.strictObject({
  classId: z.string().min(1).max(64),
  /** What the sheet's code says. */
  exercise: z.string().min(1).max(64),
  version: z.int().min(1),
});
export type FindSheet = z.infer<typeof FindSheetRequest>;

export const PileRequest = HandInRequest.extend({
  /** Whether the paper came in after it was due, by the teacher's word. */
  late: z.boolean(),
});
export type PileHandIn = z.infer<typeof PileRequest>;
