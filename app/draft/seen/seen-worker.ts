import { drawVisibleSet } from "@/lib/drawing/draw-visible-set";
import type { Answer, Asked } from "./messages";

/** Of a worker's own world, what is used here: the page's types know only windows. */
type Desk = {
  onmessage: ((event: MessageEvent<Asked>) => void) | null;
  postMessage(message: Answer): void;
};

/** Works out what the eye sees away from the page: of hundreds of walls it takes longer than a frame has. */
function answerQuestions(desk: Desk): void {
  desk.onmessage = ({ data }) => desk.postMessage(drawVisibleSet(data));
}

answerQuestions(self as unknown as Desk);
