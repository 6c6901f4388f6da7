import type { Brought } from "@/lib/draft/bring/brought";
import { placeBrought } from "@/lib/draft/bring/place/place-brought";
import { readBrought } from "@/lib/draft/bring/read-brought";
import type { Answer, Asked, FromWorker, ToWorker } from "./messages";
import { showDrawing } from "./show-drawing";

/** Of a worker's own world, what is used here: the page's types know only windows. */
type Desk = {
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
  postMessage(message: FromWorker): void;
};

/** Reads drawings away from the page, so that a large one does not hold it up. The drawing on hand stays here between questions. */
function answerQuestions(desk: Desk): void {
  let brought: Brought | null = null;
  const answer = async (asked: Asked): Promise<Answer> => {
    if (asked.ask === "place")
      return brought
        ? placeBrought(brought, asked.placing, asked.draft)
        : { ok: false, say: "The drawing is not here any more. Choose its file again." };
    brought = null;
    const reading = readBrought(new Uint8Array(await asked.file.arrayBuffer()));
    if (!reading.ok) return reading;
    brought = reading.brought;
    return showDrawing(brought);
  };
  desk.onmessage = async ({ data: { id, ...asked } }) => {
    try {
      desk.postMessage({ id, answer: await answer(asked) });
    } catch (reason) {
      desk.postMessage({ id, failed: reason instanceof Error ? reason.message : "The drawing could not be read." });
    }
  };
}

answerQuestions(self as unknown as Desk);
