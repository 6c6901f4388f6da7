import { z } from "zod";
import { MAX_FILE_BYTES } from "../../exercise/read-json";
import { LONGEST_WORDS } from "./library-limits";

/** What the pages of the library send, and the sentences for what cannot be taken. */
const id = z.string().min(1).max(64);
/** Made by a browser: as long as a hand-in's own. */
const newId = z.string().regex(/^[A-Za-z0-9-]{16,64}$/, "This plan has no name of its own.");
const word = z.string().max(60, "A link's word has twenty letters.");
const edition = z.int().min(0);

export const KeepPlanRequest = z.strictObject({
  planId: newId,
  base: edition,
  text: z.string().max(MAX_FILE_BYTES, "This plan is larger than 1 MiB, which is the most of an exercise."),
  words: z.string().max(LONGEST_WORDS, `These words have at most ${LONGEST_WORDS} letters.`),
});
export const GoBackRequest = z.strictObject({ planId: id, versionId: id, base: edition });
export const ThrowPlanRequest = z.strictObject({ planId: id, thrown: z.boolean() });
export const ErasePlanRequest = z.strictObject({ planId: id, versionId: id.nullable() });
export const SharePlanRequest = z.strictObject({ planId: id, shared: z.boolean() });
export const SharedPlanRequest = z.strictObject({ word });
export const CopyPlanRequest = z.strictObject({ word, planId: newId });
