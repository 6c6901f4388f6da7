import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { POST } from "@/app/demonstrate/draft/file/route";

const TEXT = readFileSync("tests/fixtures/tide-office.json", "utf8");

function ask(query: string, body: unknown, origin = "http://here") {
  return POST(
    new Request(`http://here/demonstrate/draft/file?${query}`, {
      method: "POST",
      headers: { "content-type": "application/json", origin, host: "here" },
      body: JSON.stringify(body),
    }),
  );
}

describe("the paper of a demonstration of one's own exercise", () => {
  it.each(["handout", "steps"])("is a PDF named after it: %s", async (what) => {
    const answer = await ask(`what=${what}&paper=a4`, { text: TEXT });
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-disposition")).toContain(`filename="tide-office-${what}.pdf"`);
    const bytes = Buffer.from(await answer.arrayBuffer());
    expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
  });

  it.each([
    ["what=poster", { text: TEXT }, "http://here", 400, /handout or steps/],
    ["what=handout&paper=napkin", { text: TEXT }, "http://here", 400, /no paper of this name/],
    ["what=handout", { text: "{" }, "http://here", 400, /cannot be drawn/],
    ["what=handout", {}, "http://here", 400, /No exercise was sent/],
    ["what=handout", { text: TEXT }, "http://elsewhere", 403, /not sent by a page of Plasterline/],
  ])("is refused in a sentence: %s", async (query, body, origin, status, words) => {
    const answer = await ask(query, body, origin);
    expect(answer.status).toBe(status);
    expect(await answer.text()).toMatch(words);
  });
});
