import { z } from "zod";

/** A folder's files, as far as they may be files of marks; how long all of it is, is bounded where it is read. */
export const FolderRequest = z.strictObject({
  files: z
    .array(z.strictObject({ path: z.string().max(1000), text: z.string().max(262_144) }))
    .max(2000, "These are more than 2000 files at once. Choose the folder of one homework."),
});
