import { readOwnExercise, sentence } from "@/app/_server/read-own-exercise";
import { handoutPages } from "@/lib/drawing/demonstration/handout-pages";
import { stepPages } from "@/lib/drawing/demonstration/step-pages";
import { answerPages } from "../../[id]/serve-pages";

const PAGES = { handout: handoutPages, steps: stepPages } as const;

/** The handout or the steps of the exercise that is sent, as a PDF. Nothing of it is kept. */
export async function POST(request: Request): Promise<Response> {
  const sent = await readOwnExercise(request);
  if (!sent.ok) return sent.answer;
  const query = new URL(request.url).searchParams;
  const name = query.get("what");
  if (name !== "handout" && name !== "steps") return sentence(400, "“what” can be handout or steps.");
  return answerPages(sent.exercise, { paper: query.get("paper"), name, pagesOf: PAGES[name] });
}
