import { randomUUID } from "node:crypto";
import type { Store } from "../store/store";
import { type Written, write } from "../store/write";
import { StrokesKept } from "./requests";

/** A line of the red pencil: places of the drawing in metres, across and up. */
export type RedLine = readonly (readonly [number, number])[];

export type Remark = { readonly strokes: readonly RedLine[]; readonly words: string; readonly at: string | null };

export const NO_REMARK: Remark = { strokes: [], words: "", at: null };

/** What the teacher wrote and drew on an attempt; the newest where there are several. */
export async function readRemark({ db }: Store, handInId: string): Promise<Remark> {
  const rows = await db.selectFrom("remark").selectAll().where("hand_in_id", "=", handInId).execute();
  const row = rows.sort((a, b) => (a.at < b.at ? 1 : -1))[0];
  return row ? { strokes: readStrokes(row.strokes), words: row.words, at: row.at } : NO_REMARK;
}

function readStrokes(text: string): readonly RedLine[] {
  try {
    const read = StrokesKept.safeParse(JSON.parse(text));
    return read.success ? read.data : [];
  } catch {
    return [];
  }
}

/** Keeps a remark in the place of the one before; one with nothing in it is none. */
export function keepRemark(
  store: Store,
  { handInId, strokes, words }: { readonly handInId: string } & Pick<Remark, "strokes" | "words">,
  now: string,
): Promise<Written<unknown>> {
  return write(store, async (all) => {
    await all.deleteFrom("remark").where("hand_in_id", "=", handInId).execute();
    if (strokes.length === 0 && words.trim() === "") return;
    await all
      .insertInto("remark")
      .values({
        id: randomUUID(),
        hand_in_id: handInId,
        strokes: JSON.stringify(strokes),
        words: words.trim(),
        at: now,
      })
      .execute();
  });
}
