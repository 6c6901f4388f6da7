import { isPdf, openPdf } from "@/app/_photo/pdf-pages";
import type { FourPoints } from "@/app/_photo/worker/messages";
import type { WorkerDesk } from "@/app/_photo/worker-desk";
import type { Trace } from "./trace";

/**
 * The longer side of what is laid under a plan, pixels: a pencil's line of half a millimetre is then a pixel or more wide on
 * paper up to 1.2 m long, the largest that plans are printed on (36 by 48 inches).
 */
const LONGER_PX = 2400;

/** A picture on the table, upright. */
export type OpenedPicture = {
  readonly key: string;
  readonly picture: Blob;
  readonly width: number;
  readonly height: number;
  /** The photograph under the plan that this is, to be laid again; null for a new one. */
  readonly from: Trace | null;
};

/** A scan of several pages, of which one is the plan. */
export type PagesAsked = { readonly file: Blob; readonly count: number };

export type Trouble = { readonly kind: "refused"; readonly say: string; readonly remedy: string };
type Opened = { readonly kind: "opened"; readonly picture: OpenedPicture } | Trouble;

/** Opens a photograph, or a page of a scan; of a scan with several pages it has to be said which. */
export async function openTracing(
  worker: WorkerDesk,
  file: Blob,
  page: number | null,
): Promise<Opened | { readonly kind: "pages"; readonly count: number }> {
  try {
    if (!(await isPdf(file))) return await openPicture(worker, file);
    const scan = await openPdf(file);
    if (scan.kind === "refused") return scan;
    try {
      if (page === null && scan.pages.count > 1) return { kind: "pages", count: scan.pages.count };
      return await openPicture(worker, await scan.pages.draw(page ?? 1));
    } finally {
      await scan.pages.close();
    }
  } catch (error) {
    return failed(error);
  }
}

async function openPicture(worker: WorkerDesk, file: Blob): Promise<Opened> {
  const answer = await worker.openPicture(file, LONGER_PX);
  if (answer.kind === "refused") return { kind: "refused", say: answer.say, remedy: answer.remedy };
  const { picture, width, height } = answer.shown;
  return { kind: "opened", picture: { key: "opened", picture, width, height, from: null } };
}

/** Sees a picture straight on, by the corners of a rectangle on it whose sides are so long, in one unit. */
export async function straightenTracing(
  worker: WorkerDesk,
  { picture }: OpenedPicture,
  corners: FourPoints,
  size: readonly [width: number, height: number],
): Promise<Opened> {
  try {
    const opened = await worker.openPicture(picture, LONGER_PX);
    if (opened.kind === "refused") return { kind: "refused", say: opened.say, remedy: opened.remedy };
    const answer = await worker.straightenAll(corners, size, LONGER_PX);
    if (answer.kind === "refused") return answer;
    const { picture: straight, width, height } = answer;
    return { kind: "opened", picture: { key: "straight", picture: straight, width, height, from: null } };
  } catch (error) {
    return failed(error);
  }
}

/** The lines of a picture alone, clear where its paper is. */
export async function linesOfTracing(
  worker: WorkerDesk,
  picture: Blob,
): Promise<{ kind: "lines"; lines: Blob } | Trouble> {
  try {
    const opened = await worker.openPicture(picture, LONGER_PX);
    if (opened.kind === "refused") return { kind: "refused", say: opened.say, remedy: opened.remedy };
    const answer = await worker.findLines();
    return answer.kind === "lines" ? { kind: "lines", lines: answer.picture } : answer;
  } catch (error) {
    return failed(error);
  }
}

function failed(error: unknown): Trouble {
  return {
    kind: "refused",
    say: "The picture could not be read here.",
    remedy: navigator.onLine
      ? `Choose it once more. (${error instanceof Error ? error.message : String(error)})`
      : "The network is away: what reads pictures is fetched the first time. Try again when it is back.",
  };
}
