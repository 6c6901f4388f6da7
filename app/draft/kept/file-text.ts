import type { Draft } from "@/lib/draft/draft";
import { writeDraft } from "@/lib/draft/write-draft";

/** A plan as the text of its file. */
export function fileText(draft: Draft): string {
  return `${JSON.stringify(writeDraft(draft), null, 2)}\n`;
}
