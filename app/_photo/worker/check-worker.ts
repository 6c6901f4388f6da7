import type { GreyPixels } from "@/lib/photo/pixels";
import { decodePhoto, greyOf } from "./decode-photo";
import { linesOf } from "./lines-of";
import { loadCodeReader, loadOpenCv } from "./load-tools";
import type { Answer, Asked, FromWorker, ToWorker } from "./messages";
import { type FoundSheet, findSheet, judgeFrame, readByCorners, readPencil, showName } from "./read-photo";
import { straightenPicture } from "./straighten-picture";

/** Of a worker's own world, what is used here: the page's types know only windows. */
type Desk = {
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
  postMessage(message: FromWorker): void;
};

/** Frames of the live view are looked at this wide, pixels. */
const FRAME_PX = 800;

/** Answers one question after another; the photograph on hand is kept between them. */
function answerQuestions(desk: Desk): void {
  let photo: ({ readonly grey: GreyPixels } & Pick<FoundSheet, "fit" | "doubts">) | null = null;
  let openCv: ReturnType<typeof loadOpenCv> | null = null;
  let reader: ReturnType<typeof loadCodeReader> | null = null;
  const cvOnce = () => {
    openCv ??= loadOpenCv();
    // A failed fetch is tried again with the next photograph.
    openCv.catch(() => {
      openCv = null;
    });
    return openCv;
  };
  const readerOnce = () => {
    reader ??= loadCodeReader();
    return reader;
  };

  const answer = async (asked: Asked, step: (words: string) => void): Promise<Answer> => {
    if (asked.ask === "frame") {
      const { frame } = asked;
      const share = Math.min(1, FRAME_PX / frame.width);
      const grey = greyOf(frame, Math.round(frame.width * share), Math.round(frame.height * share));
      frame.close();
      return judgeFrame(await cvOnce(), grey);
    }
    if (asked.ask === "photo") {
      photo = null;
      step("Opening the photograph");
      const isNew = openCv === null;
      // Fetched while the photograph is being opened; a failure is told when it is needed.
      if (asked.look) cvOnce().catch(() => {});
      const decoded = await decodePhoto(asked.file, asked.longerPx);
      if (decoded.kind === "refused") return { ...decoded, shown: null };
      photo = { grey: decoded.grey, fit: null, doubts: [] };
      if (!asked.look) return { kind: "opened", shown: decoded.shown };
      if (isNew) step("Fetching what reads it, 4 MB, the first time only");
      const tools = { cv: await cvOnce(), readBarcodes: await readerOnce() };
      step("Finding the sheet");
      const { answer: found, fit, doubts } = await findSheet(tools, decoded.grey, decoded.shown);
      photo = { grey: decoded.grey, fit, doubts };
      return found;
    }
    if (!photo) return { kind: "refused", say: "The photograph is not here any more.", remedy: "Choose it again." };
    if (asked.ask === "corners") {
      step("Straightening it by your corners");
      return readByCorners(photo.grey, asked.exercise, asked.corners, asked.ownLines);
    }
    if (asked.ask === "straighten") return straightenPicture(photo.grey, asked);
    if (asked.ask === "lines") return linesOf(photo.grey);
    if (!photo.fit) return { kind: "refused", say: "No sheet was found in it.", remedy: "Take the photograph anew." };
    if (asked.ask === "name") return showName(photo.grey, photo.fit, asked.exercise, asked.code);
    step("Reading the pencil");
    return readPencil(photo.grey, photo.fit, asked.exercise, asked.code, photo.doubts);
  };

  let turn = Promise.resolve();
  desk.onmessage = ({ data: { id, ...asked } }) => {
    turn = turn.then(async () => {
      try {
        desk.postMessage({ id, answer: await answer(asked, (step) => desk.postMessage({ id, step })) });
      } catch (error) {
        desk.postMessage({ id, failed: error instanceof Error ? error.message : String(error) });
      }
    });
  };
}

answerQuestions(self as unknown as Desk);
