import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "@playwright/test";

test("the icon is there by the name that browsers ask for of themselves", async ({ request }) => {
  const answer = await request.get("/favicon.ico");
  expect(answer.status()).toBe(200);
  expect(answer.headers()["content-type"]).toContain("image/svg+xml");
  expect(await answer.text()).toBe(readFileSync(join(process.cwd(), "app", "icon.svg"), "utf8"));
});
