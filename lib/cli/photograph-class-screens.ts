import type { Page } from "@playwright/test";
import { writeWordLink } from "../classroom/accounts/word-link";
import type { DrawnClass } from "./photograph-class";
import type { Screen } from "./photograph-screens";

/** Long enough for a screen at the front to hear from the server. */
const ANSWER_MS = 800;

/** The screens of Class, seen by its teacher or by one of its students. */
export const CLASS_SCREENS: readonly Screen[] = [
  { name: "class-1-front", show: (page, drawn) => as(page, drawn.teacher, `/class/${drawn.classId}`) },
  { name: "class-2-set", show: (page, drawn) => as(page, drawn.teacher, `/class/${drawn.classId}/homework/set`) },
  {
    name: "class-3-homework",
    show: (page, drawn) => as(page, drawn.teacher, `/class/${drawn.classId}/homework/${drawn.homeworkId}`),
  },
  { name: "class-4-student", show: (page, drawn) => as(page, drawn.student, "/class") },
  { name: "class-5-gradebook", show: (page, drawn) => as(page, drawn.teacher, `/class/${drawn.classId}/gradebook`) },
  {
    name: "class-6-drawing",
    show: (page, drawn) => as(page, drawn.teacher, `/class/${drawn.classId}/drawing/${drawn.handInId}`),
  },
  {
    name: "class-7-teach-again",
    show: (page, drawn) => as(page, drawn.teacher, `/class/${drawn.classId}/teach-again`),
  },
  { name: "class-8-live", show: showMarks },
  { name: "class-9-phone", show: (page, drawn) => as(page, drawn.student, `/live/${drawn.voteCode}`) },
  { name: "class-10-pile", show: (page, drawn) => as(page, drawn.teacher, `/class/${drawn.classId}/pile`) },
  { name: "class-11-plans", show: (page, drawn) => as(page, drawn.teacher, "/class/plans") },
  { name: "class-12-plan", show: (page, drawn) => as(page, drawn.teacher, `/class/plans/${drawn.planId}`) },
  { name: "class-13-shared", show: (page, drawn) => as(page, drawn.teacher, writeWordLink("shared", drawn.planWord)) },
  { name: "class-14-teachers", show: (page, drawn) => as(page, drawn.teacher, "/class/teachers") },
  {
    name: "class-15-change",
    show: (page, drawn) => as(page, drawn.teacher, `/class/${drawn.classId}/homework/${drawn.homeworkId}/change`),
  },
];

async function as(page: Page, cookies: readonly string[], path: string): Promise<void> {
  await page.goto("/class");
  const url = new URL("/", page.url()).href;
  await page.context().addCookies(
    cookies.map((cookie) => {
      const [name = "", value = ""] = cookie.split(/=(.*)/s);
      return { name, value, url };
    }),
  );
  await page.goto(path);
  // A vote's line to the server stays open, so that the network is never at rest.
  await page.waitForLoadState("load");
  await page.waitForTimeout(ANSWER_MS);
}

async function showMarks(page: Page, drawn: DrawnClass): Promise<void> {
  await as(page, drawn.teacher, `/class/${drawn.classId}/live/${drawn.voteId}`);
  const press = page.getByRole("button", { name: "Show marks and true point" });
  // One vote serves every photograph: after the first its marks are shown already.
  if (await press.isVisible()) await press.click();
  await page.locator("[data-cloud]").waitFor();
}
