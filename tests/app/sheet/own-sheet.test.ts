import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { POST } from "@/app/sheet/draft/file/route";

const TEXT = readFileSync("tests/fixtures/tide-office.json", "utf8");

function ask(query: string, body: unknown, origin = "http://here") {
  return POST(
    new Request(`http://here/sheet/draft/file?${query}`, {
      method: "POST",
      headers: { "content-type": "application/json", origin, host: "here" },
      body: JSON.stringify(body),
    }),
  );
}

describe("the sheet of an exercise that is in no course", () => {
  it("is made of what is sent, and named after it", async () => {
    const answer = await ask("view=plan&format=svg&paper=letter", { text: TEXT });
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-disposition")).toBe('attachment; filename="tide-office-plan-letter.svg"');
    expect(await answer.text()).toMatch(/^(<\?xml[^>]*>\s*)?<svg/);
  });

  it("is a PDF for printing", async () => {
    const answer = await ask("view=sheet&format=pdf&paper=letter&copies=2", { text: TEXT });
    expect(
      Buffer.from(await answer.arrayBuffer())
        .subarray(0, 5)
        .toString(),
    ).toBe("%PDF-");
  });

  it("has the pages of a set with its keys, each by its number, for a preview", async () => {
    const page = (n: number) => ask(`view=sheet&format=svg&paper=letter&copies=2&key=points&page=${n}`, { text: TEXT });
    expect(await (await page(2)).text()).toMatch(/<title>[^<]*2<\/title>/);
    expect(await (await page(3)).text()).toMatch(/<title>Answer key/);
    const past = await page(9);
    expect(past.status).toBe(400);
    expect(await past.text()).toBe("It has 3 pages, and no page 9.");
  });

  it("can be a set for a class, each with an exercise of its own like this one", async () => {
    const answer = await ask("view=sheet&format=svg&paper=letter&copies=2&seed=5&page=2", { text: TEXT });
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-disposition")).toContain("class-set-of-2");
  });

  it.each([
    ["view=plan", { text: "{" }, "http://here", 400, /cannot be drawn/],
    ["view=plan", {}, "http://here", 400, /No exercise was sent/],
    ["view=roof", { text: TEXT }, "http://here", 400, /roof/],
    ["view=plan", { text: TEXT }, "http://elsewhere", 403, /not sent by a page of Plasterline/],
  ])("is refused in a sentence: %s", async (query, body, origin, status, words) => {
    const answer = await ask(query, body, origin);
    expect(answer.status).toBe(status);
    expect(await answer.text()).toMatch(words);
  });
});
