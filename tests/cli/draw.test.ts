import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
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
    // A printed sheet is measured in the tests of pages; here the bar: four parts of 2 ft at 1/4 in to the foot, half an inch each.
    const bar = [...svg.matchAll(/d="M([\d.]+) ([\d.]+)L([\d.]+) \2L\3 [\d.]+L\1 [\d.]+Z"/g)];
    const widths = bar.map(([, a, , b]) => Number(b) - Number(a));
    expect(widths.filter((each) => Math.abs(each - 12.7) < 0.01).length).toBeGreaterThanOrEqual(4);
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
});
