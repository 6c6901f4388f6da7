import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { commandFiles, printed, refusal } from "./call-in-process";

const files = commandFiles();
const out = (name: string) => join(files.folder(), name);

describe("draw", () => {
  it.each([
    ["plan", "svg", "<svg"],
    ["picture", "svg", "<svg"],
    ["sheet", "svg", "<svg"],
    ["both", "pdf", "%PDF-"],
    ["sheet", "pdf", "%PDF-"],
    ["construction", "pdf", "%PDF-"],
    ["picture", "png", "\u0089PNG"],
  ])("writes the %s as %s", async (view, ending, start) => {
    const file = out(`${view}.${ending}`);
    const said = await printed(0, "draw", files.exercise(), "--view", view, "--out", file, "--dpi", "72");
    expect(Object.keys(said)).toEqual(["file", "view", "scale", "widthMm", "heightMm", "pages"]);
    expect(said).toMatchObject({ file, view, pages: 1 });
    expect(readFileSync(file).toString("latin1").startsWith(start)).toBe(true);
  });

  it("draws at the exercise's own scale, in real millimetres", async () => {
    const file = out("true.svg");
    await printed(0, "draw", files.exercise(), "--view", "plan", "--out", file);
    const svg = readFileSync(file, "utf8");
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
    expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
    // A printed sheet is measured in the tests of pages; here the bar: 8 ft at 1/4 in to the foot are 2 in, and its parts half an inch.
    const ink = /<path d="([^"]*)" fill="#000000"/.exec(svg)?.[1] ?? "";
    const bar = [...ink.matchAll(/M([\d.]+) ([\d.]+)L([\d.]+) \2L\3 [\d.]+L\1 [\d.]+Z/g)];
    const widths = bar.map(([, a, , b]) => Number(b) - Number(a));
    expect(widths.filter((each) => Math.abs(each - 12.7) < 0.01)).toHaveLength(2);
    expect(widths.filter((each) => Math.abs(each - 50.8) < 0.01)).toHaveLength(2);
  });

  it("draws by hand, or rules every line", async () => {
    const curves = async (...words: string[]) => {
      const file = out("line.svg");
      await printed(0, "draw", files.exercise(), "--view", "picture", "--out", file, ...words);
      return readFileSync(file, "utf8").match(/ d="M[^"]*C/g)?.length ?? 0;
    };
    expect(await curves()).toBeGreaterThan(20);
    expect(await curves("--line", "ruled")).toBe(0);
  });

  it("prints a smaller scale where the paper asks for it, and the key's pages", async () => {
    const file = out("keys.pdf");
    const words = ["--view", "sheet", "--paper", "letter", "--key", "all", "--out", file];
    const said = await printed(0, "draw", files.exercise(), ...words);
    expect(said).toMatchObject({ scale: "1/8in=1ft", widthMm: 215.9, heightMm: 279.4, pages: 4 });
  });

  it.each([
    [["--out", "x.svg"], /say what to draw/, /--view plan/],
    [["--view", "plan"], /say where/, /--out/],
    [["--view", "shet", "--out", "x.svg"], /--view shet is unknown/, /did you mean sheet\?/],
    [["--view", "plan", "--out", "x.gif"], /no ending that says/, /\.svg, \.pdf, \.png/],
    [["--view", "plan", "--out", "x.svg", "--paper", "a5"], /--paper a5 is unknown/, /a4/],
    [["--view", "plan", "--out", "x.svg", "--key", "all"], /--key belongs to --view sheet/, /draw EXERCISE/],
    [["--view", "plan", "--out", "x.svg", "--point", "B.foot"], /--point belongs/, /draw EXERCISE/],
    [["--view", "construction", "--out", "x.svg", "--point", "B.fot"], /B\.fot names no point/, /B\.foot/],
    [["--view", "plan", "--out", "x.png", "--dpi", "9000"], /--dpi is a number from 30 to 1200/, /--dpi 300/],
    [["--view", "plan", "--out", "no/such/folder/x.svg"], /there is no such folder/, /another place/],
    [["--view", "sheet", "--key", "all", "--out", "x.svg"], /holds one page, and this has 4/, /\.pdf/],
  ])("refuses %j", async (words, message, hint) => {
    const error = await refusal("draw", files.exercise(), ...words);
    expect(error.message).toMatch(message);
    expect(error.hint).toMatch(hint);
    expect(existsSync("x.svg")).toBe(false);
  });

  it("refuses a path through a file, a folder in place of a file, and a name that is too long", async () => {
    const file = files.exercise();
    const tell = async (path: string) => (await refusal("draw", file, "--view", "plan", "--out", path)).message;
    mkdirSync(out("folder.svg"));
    expect(await tell(join(file, "x.svg"))).toMatch(/a part of the path is a file, not a folder/);
    expect(await tell(out("folder.svg"))).toMatch(/it is a folder/);
    expect(await tell(out(`${"x".repeat(300)}.svg`))).toMatch(/the name is too long/);
  });

  it("refuses a page larger than a file may have, and prints it on a paper that is named", async () => {
    const file = files.exercise(["/scale", "1:1"], ["/units", "m"]);
    const words = (ending: string) => ["draw", file, "--view", "plan", "--out", out(`large.${ending}`)];
    expect((await refusal(...words("pdf"))).message).toMatch(/at most 5080 mm/);
    expect((await refusal(...words("png"))).hint).toMatch(/--paper a3/);
    expect(await printed(0, ...words("pdf"), "--paper", "a3")).toMatchObject({ scale: "1:200" });
  });

  it.each(["Ωμέγα → Łódź", "漢字", "bell \u0007 \u0000", "👍", "x".repeat(200)])(
    "draws an exercise of any title: %j",
    async (title) => {
      const file = files.exercise(["/title", title]);
      for (const ending of ["svg", "pdf", "png"]) {
        const words = ["--view", "plan", "--out", out(`title.${ending}`), "--dpi", "40"];
        expect(await printed(0, "draw", file, ...words)).toMatchObject({ pages: 1 });
      }
      const { width } = await sharp(readFileSync(out("title.svg"))).metadata();
      expect(width).toBeGreaterThan(100);
    },
  );
});
