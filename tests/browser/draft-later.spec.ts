import { expect, test } from "@playwright/test";
import { button, openDesk } from "./draft-hands";

test("what is not needed to begin drawing is fetched when it is asked for, and once more when the network was away", async ({
  page,
}) => {
  await openDesk(page);
  await page.waitForLoadState("networkidle");
  const scripts = "**/_next/static/chunks/*.js*";
  const asked: string[] = [];
  await page.route(scripts, (route) => {
    asked.push(route.request().url());
    return route.abort();
  });
  await button(page, "Draw").click();
  await expect(button(page, "Draw walls")).toBeVisible();
  expect(asked).toEqual([]);

  const desk = page.locator(".draft-content");
  const before = await desk.boundingBox();
  await button(page, "Notes").click();
  await expect(desk.getByText(/^Notes: what this takes could not be fetched/)).toBeVisible();
  expect(asked.length).toBeGreaterThan(0);
  expect(await desk.boundingBox()).toEqual(before);
  await button(page, "Try again").click();
  await expect(button(page, "Try again")).toBeVisible();

  await page.unroute(scripts);
  await button(page, "Try again").click();
  await expect(page.getByRole("heading", { name: "Notes" })).toBeVisible();
  await expect(desk).toBeFocused();
  expect(await desk.boundingBox()).toEqual(before);
  await page.getByText("Plans", { exact: true }).click();
  await expect(button(page, "DXF of the plan")).toBeVisible();
});
