import { spawn } from "node:child_process";
import { mkdir } from "node:fs/promises";
import { isAbsolute, join } from "node:path";
import { type BrowserContext, chromium, type Page } from "@playwright/test";
import { findChromium } from "./find-chromium.mjs";
import { findFreePort } from "./try-port.mjs";
import { waitForAnswer } from "./wait-for-answer.mjs";

/**
 * Photographs every screen of the app, at every size it is made for, in both lights, into a folder:
 * `npx tsx lib/cli/photograph.ts FOLDER [WORD]`. Only screens whose name holds WORD, if one is given. Build the pages first.
 */
const SIZES = [
  { name: "phone", width: 390, height: 844, touch: true, look: "desk" },
  { name: "tablet", width: 820, height: 1180, touch: true, look: "desk" },
  { name: "laptop", width: 1366, height: 768, touch: false, look: "desk" },
  { name: "projector", width: 1920, height: 1080, touch: false, look: "projector" },
] as const;

const LIGHTS = ["paper", "dark"] as const;

const EXERCISE = "alcove";
/** Marks that look like a student's: shares of the picture pane across and down, one a step. */
const MARKS = [
  [0.17, 0.82],
  [0.3, 0.755],
  [0.385, 0.765],
  [0.42, 0.715],
] as const;

type Screen = { readonly name: string; readonly show: (page: Page) => Promise<void> };

const SCREENS: readonly Screen[] = [
  { name: "home", show: (page) => open(page, "/") },
  { name: "practise-1-empty", show: (page) => openSheet(page) },
  { name: "practise-2-placed", show: (page) => placeMarks(page, 3, "placed") },
  { name: "practise-3-corrected", show: (page) => placeMarks(page, 4, "corrected") },
  { name: "practise-4-straightedge", show: layLines },
  { name: "practise-5-closer", show: comeCloser },
  { name: "practise-6-given", show: (page) => openSheet(page, "pair-of-windows") },
  { name: "practise-7-metric", show: (page) => openSheet(page, "arch-through-the-back") },
  { name: "result", show: finish },
  { name: "unknown-exercise", show: (page) => open(page, "/practise/no-such-sheet") },
];

async function open(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await page.waitForLoadState("networkidle");
}

async function openSheet(page: Page, id: string = EXERCISE): Promise<void> {
  await open(page, `/practise/${id}`);
  await page.locator(".sheet[data-opened=true]").waitFor();
}

async function placeMarks(page: Page, count: number, last: "placed" | "corrected" | "set down"): Promise<void> {
  await openSheet(page);
  const pane = await page.locator(".picture-keys").boundingBox();
  if (!pane) throw new Error("The picture has no place on the page.");
  for (let i = 0; i < count; i++) {
    const [across, down] = MARKS[i % MARKS.length] ?? [0.5, 0.5];
    await page.mouse.click(pane.x + pane.width * across, pane.y + pane.height * down);
    if (i === count - 1 && last === "placed") return;
    await page.getByRole("button", { name: "Set it down" }).click();
    if (i === count - 1 && last === "corrected") return;
    await page.getByRole("button", { name: /^(Next:|See the whole)/ }).click();
  }
}

async function layLines(page: Page): Promise<void> {
  await placeMarks(page, 3, "set down");
  await page.getByRole("button", { name: "Straightedge" }).click();
  for (const through of [`the rule's 5'-0" stage right`, "the opening's foot, stage left"]) {
    await page.getByLabel("From").selectOption({ label: "the CVP" });
    await page.getByLabel("Through").selectOption({ label: through });
    await page.getByRole("button", { name: "Draw this line" }).click();
  }
}

async function comeCloser(page: Page): Promise<void> {
  await placeMarks(page, 3, "placed");
  await page.getByRole("button", { name: "Magnifier" }).click();
  for (let i = 0; i < 2; i++) await page.getByRole("button", { name: "Closer" }).click();
}

async function finish(page: Page): Promise<void> {
  await placeMarks(page, 12, "set down");
  await page.getByRole("heading", { name: /^Score/ }).waitFor();
}

async function photograph(folder: string, only: string): Promise<number> {
  const port = await findFreePort();
  const address = `http://127.0.0.1:${port}`;
  const server = spawn(
    process.execPath,
    ["node_modules/next/dist/bin/next", "start", "-H", "127.0.0.1", "-p", String(port)],
    { stdio: "ignore", env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1" } },
  );
  try {
    const answer = await waitForAnswer(address, () => server.exitCode === null);
    if (answer === undefined) throw new Error("The pages could not be served: build them first (npm run build).");
    return await takeAll(folder, address, only);
  } finally {
    server.kill();
  }
}

async function takeAll(folder: string, address: string, only: string): Promise<number> {
  const found = findChromium(process);
  if (found.kind === "misnamed") throw new Error(found.sentence);
  const browser = await chromium.launch({
    args: ["--no-sandbox", "--disable-gpu", "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1"],
    ...(found.kind === "found" ? { executablePath: found.path } : {}),
  });
  let taken = 0;
  for (const size of SIZES) {
    for (const light of LIGHTS) {
      for (const screen of SCREENS.filter(({ name }) => name.includes(only))) {
        const context: BrowserContext = await browser.newContext({
          baseURL: address,
          viewport: { width: size.width, height: size.height },
          hasTouch: size.touch,
          reducedMotion: "reduce",
        });
        await context.addCookies([{ name: "plasterline-look", value: `${light}.${size.look}`, url: address }]);
        const page = await context.newPage();
        await screen.show(page);
        await page.screenshot({ path: join(folder, `${screen.name}-${size.name}-${light}.png`) });
        await context.close();
        taken += 1;
      }
    }
  }
  await browser.close();
  return taken;
}

const [wanted, only = ""] = process.argv.slice(2);
if (!wanted) {
  process.stderr.write("Say where the photographs go: npx tsx lib/cli/photograph.ts FOLDER [WORD]\n");
  process.exitCode = 2;
} else {
  const folder = isAbsolute(wanted) ? wanted : join(process.env.INIT_CWD ?? process.cwd(), wanted);
  await mkdir(folder, { recursive: true });
  process.stdout.write(`${await photograph(folder, only)} photographs in ${folder}\n`);
}
