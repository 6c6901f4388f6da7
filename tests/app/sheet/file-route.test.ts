import { describe, expect, it } from "vitest";
import { GET } from "@/app/sheet/[id]/file/route";

const get = (id: string, query = "") =>
  GET(new Request(`http://localhost/sheet/${encodeURIComponent(id)}/file?${query}`), {
    params: Promise.resolve({ id }),
  });

async function beginning(response: Response, bytes = 8): Promise<string> {
  return new TextDecoder("latin1").decode((await response.arrayBuffer()).slice(0, bytes));
}

describe("the files of a sheet", () => {
  it.each([
    ["", "application/pdf", "raking-wall-letter.pdf", "%PDF-1."],
    ["format=svg&paper=a4", "image/svg+xml; charset=utf-8", "raking-wall-a4.svg", "<svg xml"],
    ["view=plan", "application/pdf", "raking-wall-plan-letter.pdf", "%PDF-1."],
    ["view=picture&format=svg", "image/svg+xml; charset=utf-8", "raking-wall-picture-letter.svg", "<svg xml"],
    ["view=both&paper=a3&format=png", "image/png", "raking-wall-both-a3.png", "PNG"],
    ["view=construction&point=B.foot", "application/pdf", "raking-wall-construction-B.foot-letter.pdf", "%PDF-1."],
    ["view=construction", "application/pdf", "raking-wall-construction-letter.pdf", "%PDF-1."],
    ["copies=2&key=points", "application/pdf", "raking-wall-2-copies-letter.pdf", "%PDF-1."],
    ["copies=2&seed=5&key=points", "application/pdf", "raking-wall-class-set-of-2-letter.pdf", "%PDF-1."],
  ])("for “%s” come as %s with a name", async (query, type, name, start) => {
    const response = await get("raking-wall", query);
    expect(response.status).toBe(200);
    expect(response.headers.get("Content-Type")).toBe(type);
    expect(response.headers.get("Content-Disposition")).toBe(`attachment; filename="${name}"`);
    expect(await beginning(response)).toContain(start);
  });

  it("are shown in the page where that is asked", async () => {
    const response = await get("raking-wall", "format=svg&show=yes");
    expect(response.headers.get("Content-Disposition")).toMatch(/^inline;/);
  });

  it("have the pages that a set has, each by its number", async () => {
    const titles = await Promise.all(
      [1, 2, 3, 4].map(async (page) => {
        const svg = await (await get("walls-2-7", `copies=2&seed=7&key=points&format=svg&page=${page}`)).text();
        return /<title>(.*?)<\/title>/.exec(svg)?.[1] ?? "";
      }),
    );
    expect(titles.map((title) => title.startsWith("Answer key"))).toEqual([false, false, true, true]);
    expect(titles[1]).toMatch(/, sheet 2$/);
  });

  it("of a set are in the units of the exercise that it begins with", async () => {
    for (const [id, scale] of [
      ["the-tide-office", /SCALE [^<]*1'-0/],
      ["raking-wall", /SCALE 1:\d/],
    ] as const)
      for (const page of [1, 2, 3, 4]) {
        const svg = await (await get(id, `copies=4&seed=3&format=svg&page=${page}`)).text();
        expect(svg.replaceAll("&#39;", "'")).toMatch(scale);
      }
  });

  it.each([
    ["no-such-thing", "", 404, "no exercise"],
    ["raking-wall", "paper=a5", 400, "a5"],
    ["raking-wall", "view=construction&point=Z.foot", 400, "Z.foot"],
    ["raking-wall", "format=svg&page=3", 400, "no page 3"],
    ["raking-wall", "copies=4000", 400, "4000"],
    ["raking-wall", "view=<script>", 400, "&lt;script&gt;"],
  ])("of %s for “%s” are refused by a page in plain words", async (id, query, status, words) => {
    const response = await get(id, query);
    expect(response.status).toBe(status);
    expect(response.headers.get("Content-Type")).toBe("text/html; charset=utf-8");
    const html = await response.text();
    expect(html.toLowerCase()).toContain(words.toLowerCase());
    expect(html).not.toContain("<script");
  });
});
