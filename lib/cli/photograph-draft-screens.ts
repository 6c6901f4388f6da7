import { join } from "node:path";
import type { Page } from "@playwright/test";
import type { Screen } from "./photograph-screens";

/** A set with something of everything on it. */
const PLAN = join(process.cwd(), "exercises", "sets", "02-tallow-kitchen.json");
/** Long enough for notes, sight lines and the picture to be worked out at rest. */
const AT_REST_MS = 1500;

/** The screens of Draft: an empty table, and a plan with each of the drawers beside it. */
export const DRAFT_SCREENS: readonly Screen[] = [
  { name: "draft-1-empty", show: openTable },
  { name: "draft-2-stage", show: (page) => openDrawer(page, "Stage and eye") },
  { name: "draft-3-draw", show: (page) => openDrawer(page, "Draw") },
  { name: "draft-4-things", show: chooseWall },
  { name: "draft-5-notes", show: lookFromSeat },
  { name: "draft-6-exercise", show: (page) => openDrawer(page, "Make it an exercise") },
];

async function openTable(page: Page): Promise<void> {
  await page.goto("/draft");
  await page.locator(".draft-board[data-state=keeping]").waitFor();
}

async function openDrawer(page: Page, name: string): Promise<void> {
  await openTable(page);
  await page.getByRole("button", { name: "Make it an exercise", exact: true }).click();
  await page.locator(".open-file input[type=file]").setInputFiles(PLAN);
  await page.getByRole("button", { name: "Copy it to your desk" }).click();
  await page.locator(".draft-board[data-state=keeping]").waitFor();
  await page.getByRole("button", { name, exact: true }).click();
  await page.waitForTimeout(AT_REST_MS);
}

async function chooseWall(page: Page): Promise<void> {
  await openDrawer(page, "On the plan");
  await page.getByLabel(/^Wall/).nth(1).check();
}

async function lookFromSeat(page: Page): Promise<void> {
  await openDrawer(page, "Notes");
  await page.getByLabel("Seen from").selectOption({ index: 1 });
  await page.waitForTimeout(AT_REST_MS);
}
