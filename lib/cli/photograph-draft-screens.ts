import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { sendPlan } from "../draft/send/send-plan";
import { readExercise } from "../exercise/read-exercise";
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
  { name: "draft-7-bring", show: (page) => bringDrawing(page) },
  { name: "draft-8-comes-out", show: takeLines },
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

/** The same set as another program would send it. */
async function bringDrawing(page: Page): Promise<void> {
  const reading = readExercise(await readFile(PLAN, "utf8"));
  if (!reading.ok) throw new Error("The set cannot be read.");
  await page.goto("/draft/bring");
  await page.waitForLoadState("networkidle");
  const file = { name: "kitchen.dxf", mimeType: "image/vnd.dxf", buffer: Buffer.from(sendPlan(reading.exercise)) };
  await page.locator("input[type=file]").setInputFiles(file);
  await page.locator("#brought-drawing[transform]").waitFor();
}

async function takeLines(page: Page): Promise<void> {
  await bringDrawing(page);
  await page.getByRole("button", { name: "Take it as the centre line" }).click();
  await page.getByRole("button", { name: "Take it as the plaster line" }).click();
  await page.locator(".bring-out[data-state=out]").waitFor();
  await page.waitForTimeout(AT_REST_MS);
}
