import { gzipSync } from "node:zlib";
import type { Browser, Response } from "@playwright/test";

/** The JavaScript of a page of this stack that does nothing, kB gzipped. */
const BLANK_PAGE_KB = 148;

/** The JavaScript that a page asks for as it is opened, gzipped as a server sends it. */
export async function measureScripts(within: Browser, address: string, what: string): Promise<void> {
  const page = await within.newPage();
  const sizes: Promise<number>[] = [];
  const count = (response: Response) => {
    if (response.request().resourceType() !== "script") return;
    sizes.push(response.body().then((body) => gzipSync(body).length));
  };
  page.on("response", count);
  await page.goto(address);
  await page.waitForLoadState("networkidle");
  // A worker's script may come later still: the page does not wait for it.
  page.off("response", count);
  const total = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0) / 1000;
  console.log(
    `JavaScript of ${what}: ${total.toFixed(0)} kB gzipped in ${sizes.length} files, ${(total - BLANK_PAGE_KB).toFixed(0)} over a blank page`,
  );
  await page.close();
}
