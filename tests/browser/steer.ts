import type { Page } from "@playwright/test";
import type { Place } from "./drive";

/** Presses Tab until a thing has the focus. */
export async function tabTo(page: Page, there: () => Promise<boolean>) {
  for (let i = 0; i < 40; i++) {
    if (await there()) return;
    await page.keyboard.press("Tab");
  }
  throw new Error("Tab never came there.");
}

/** Where the mark not yet set down stands, as the browser keeps it. */
export async function pendingPlace(page: Page, id: string): Promise<Place> {
  return page.evaluate((name) => JSON.parse(localStorage.getItem(`plasterline.attempt.${name}`) ?? "{}").pending, id);
}

/** Arrow presses, coarse then plain then fine, that bring a mark from one place to another. */
export async function steer(page: Page, from: Place, to: Place, scaleRatio: number) {
  const along = [
    ["ArrowRight", "ArrowLeft"],
    ["ArrowUp", "ArrowDown"],
  ] as const;
  for (const [axis, [more, less]] of along.entries()) {
    let left = (((to[axis] ?? 0) - (from[axis] ?? 0)) * 1000) / scaleRatio;
    for (const [modifier, step] of [
      ["Shift+", 5],
      ["", 1],
      ["Alt+", 0.2],
    ] as const) {
      const presses = step === 0.2 ? Math.round(Math.abs(left) / step) : Math.floor(Math.abs(left) / step + 1e-9);
      for (let i = 0; i < presses; i++) await page.keyboard.press(`${modifier}${left > 0 ? more : less}`);
      left -= Math.sign(left) * presses * step;
    }
  }
}
