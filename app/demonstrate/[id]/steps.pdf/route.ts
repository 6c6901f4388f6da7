import { stepPages } from "@/lib/drawing/demonstration/step-pages";
import { servePages } from "../serve-pages";

type Context = { readonly params: Promise<{ readonly id: string }> };

export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { id } = await params;
  const paper = new URL(request.url).searchParams.get("paper");
  return servePages({ id, paper, name: "steps", pagesOf: stepPages });
}
