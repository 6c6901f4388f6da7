import { spawn } from "node:child_process";
import { mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { isAbsolute, join } from "node:path";
import { type BrowserContext, chromium } from "@playwright/test";
import { findChromium } from "./find-chromium.mjs";
import { CHECK_SCREENS } from "./photograph-check-screens";
import { type DrawnClass, drawClass } from "./photograph-class";
import { CLASS_SCREENS } from "./photograph-class-screens";
import { DRAFT_SCREENS } from "./photograph-draft-screens";
import { SCREENS, type Screen } from "./photograph-screens";
import { findFreePort } from "./try-port.mjs";
import { waitForAnswer } from "./wait-for-answer.mjs";

/**
 * Photographs every screen of the app, at every size it is made for, in both lights, into a folder:
 * `npm run photograph -- FOLDER [WORD]`. Only screens whose name holds WORD, if one is given. `npm run photograph -- --readme`
 * takes the pictures of the README instead, each at the size it is shown for. Build the pages first.
 */
const SIZES = [
  { name: "phone", width: 390, height: 844, touch: true, look: "desk" },
  { name: "tablet", width: 820, height: 1180, touch: true, look: "desk" },
  { name: "laptop", width: 1366, height: 768, touch: false, look: "desk" },
  { name: "projector", width: 1920, height: 1080, touch: false, look: "projector" },
] as const;

const LIGHTS = ["paper", "dark"] as const;

const EVERY_SCREEN = [...SCREENS, ...CHECK_SCREENS, ...DRAFT_SCREENS, ...CLASS_SCREENS];

/** The README's pictures: the screen, the size it is shown at, and its file. */
const README_PICTURES: readonly (readonly [screen: string, size: string, file: string])[] = [
  ["home", "laptop", "home"],
  ["practise-3-corrected", "laptop", "practise"],
  ["practise-4-straightedge", "laptop", "straightedge"],
  ["practise-9-how", "laptop", "show-how"],
  ["reading-2-corrected", "laptop", "reading-back"],
  ["result", "laptop", "result"],
  ["result-finished", "laptop", "finished"],
  ["record", "laptop", "record"],
  ["draft-4-things", "laptop", "draft"],
  ["draft-8-comes-out", "laptop", "bring"],
  ["class-12-plan", "laptop", "library"],
  ["demonstrate-1-line", "projector", "demonstrate"],
  ["demonstrate-3-notes", "laptop", "notes"],
  ["sheet", "laptop", "sheet"],
  ["check-3-result", "laptop", "check"],
  ["class-5-gradebook", "laptop", "gradebook"],
  ["class-6-drawing", "laptop", "drawing"],
  ["class-7-teach-again", "laptop", "teach-again"],
  ["class-8-live", "projector", "everyone-places-it"],
];

async function photograph(folder: string, shots: readonly Shot[]): Promise<number> {
  const store = await mkdtemp(join(tmpdir(), "plasterline-photographs-"));
  const drawn = await drawClass(store);
  const port = await findFreePort();
  const address = `http://127.0.0.1:${port}`;
  const server = spawn(
    process.execPath,
    ["node_modules/next/dist/bin/next", "start", "-H", "127.0.0.1", "-p", String(port)],
    {
      stdio: "ignore",
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", PLASTERLINE_DATA: store, DATABASE_URL: "" },
    },
  );
  try {
    const answer = await waitForAnswer(address, () => server.exitCode === null);
    if (answer === undefined) throw new Error("The pages could not be served: build them first (npm run build).");
    return await takeAll(folder, address, shots, drawn);
  } finally {
    const gone = new Promise((resolve) => server.once("close", resolve));
    server.kill("SIGKILL");
    await gone;
    await rm(store, { recursive: true, force: true });
  }
}

async function takeAll(folder: string, address: string, shots: readonly Shot[], drawn: DrawnClass): Promise<number> {
  const found = findChromium(process);
  if (found.kind === "misnamed") throw new Error(found.sentence);
  const browser = await chromium.launch({
    args: ["--no-sandbox", "--disable-gpu", "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1"],
    ...(found.kind === "found" ? { executablePath: found.path } : {}),
  });
  for (const { screen, size, light, file } of shots) {
    const context: BrowserContext = await browser.newContext({
      baseURL: address,
      viewport: { width: size.width, height: size.height },
      hasTouch: size.touch,
      reducedMotion: "reduce",
    });
    await context.addCookies([{ name: "plasterline-look", value: `${light}.${size.look}`, url: address }]);
    const page = await context.newPage();
    await screen.show(page, drawn);
    await page.screenshot({ path: join(folder, `${file}.png`) });
    await context.close();
  }
  await browser.close();
  return shots.length;
}

type Shot = {
  readonly screen: Screen;
  readonly size: (typeof SIZES)[number];
  readonly light: (typeof LIGHTS)[number];
  readonly file: string;
};

function everyShot(only: string): readonly Shot[] {
  const screens = EVERY_SCREEN.filter(({ name }) => name.includes(only));
  return SIZES.flatMap((size) =>
    LIGHTS.flatMap((light) =>
      screens.map((screen) => ({ screen, size, light, file: `${screen.name}-${size.name}-${light}` })),
    ),
  );
}

function readmeShots(): readonly Shot[] {
  return README_PICTURES.map(([name, at, file]) => {
    const screen = EVERY_SCREEN.find((each) => each.name === name);
    const size = SIZES.find((each) => each.name === at);
    if (!screen || !size) throw new Error(`There is no screen ${name} of size ${at}.`);
    return { screen, size, light: "paper", file };
  });
}

const [wanted, only = ""] = process.argv.slice(2);
if (!wanted) {
  process.stderr.write("Say where the photographs go: npm run photograph -- FOLDER [WORD]\n");
  process.exitCode = 2;
} else if (wanted === "--readme") {
  const folder = join(process.cwd(), "public", "pictures");
  process.stdout.write(`${await photograph(folder, readmeShots())} pictures of the README\n`);
} else {
  const folder = isAbsolute(wanted) ? wanted : join(process.env.INIT_CWD ?? process.cwd(), wanted);
  await mkdir(folder, { recursive: true });
  process.stdout.write(`${await photograph(folder, everyShot(only))} photographs in ${folder}\n`);
}
