import { pagesToPdf } from "@/lib/drawing/paper/pages-to-pdf";
import type { PaperPage } from "@/lib/drawing/paper/paper-page";
import type { Exercise } from "@/lib/exercise/exercise";
import { PAPERS, type Paper } from "@/lib/sheet/paper-size";
import { findDemonstrated } from "./find-demonstrated";

export type Asked = {
  /** The paper that was asked for, as written; null for the exercise's own: Letter where lengths are in feet, else A4. */
  readonly paper: string | null;
  /** What the file is called after the exercise. */
  readonly name: string;
  readonly pagesOf: (exercise: Exercise, paper: Paper) => readonly PaperPage[];
};

export type PagesRequest = Asked & { readonly id: string };

/** A demonstration on paper as a PDF; what cannot be done is said in a sentence. */
export async function servePages({ id, ...asked }: PagesRequest): Promise<Response> {
  const found = await findDemonstrated(id);
  if (found.kind === "unknown") return sentence(404, "There is no exercise of this name in the course.");
  if (found.kind === "broken")
    return sentence(422, `The exercise's file, ${found.entry.file}, cannot be read: its page says what to mend.`);
  return answerPages(found.exercise, asked);
}

/** An exercise's pages as the answer of a route. */
export async function answerPages(exercise: Exercise, { paper, name, pagesOf }: Asked): Promise<Response> {
  const chosen = paper === null ? (exercise.units === "m" ? "a4" : "letter") : PAPERS.find((each) => each === paper);
  if (!chosen) return sentence(400, `There is no paper of this name: choose one of ${PAPERS.join(", ")}.`);
  const pdf = await pagesToPdf(pagesOf(exercise, chosen), { title: `${exercise.title}: ${name}` });
  return new Response(new Uint8Array(pdf), {
    headers: {
      "content-type": "application/pdf",
      "content-disposition": `inline; filename="${exercise.id.replace(/[^\w-]/g, "-")}-${name}.pdf"`,
    },
  });
}

function sentence(status: number, words: string): Response {
  return new Response(`${words}\n`, { status, headers: { "content-type": "text/plain; charset=utf-8" } });
}
