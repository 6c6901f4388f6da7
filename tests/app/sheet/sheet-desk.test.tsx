import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { SheetDesk } from "@/app/sheet/[id]/sheet-desk";
import type { SheetScales } from "@/app/sheet/[id]/sheet-scales";

const EXERCISE = { id: "raking-wall", title: "A raking wall", unit: "walls", level: 2 } as const;
const ASKED = [
  { name: "A.foot", words: "The foot of A" },
  { name: "A.top", words: "The top of A" },
];
const SCALES: SheetScales = {
  letter: { fits: true, scale: "1:100", openingMm: 100 },
  tabloid: { fits: true, scale: "1:50", openingMm: 200 },
  a4: { fits: true, scale: "1:100", openingMm: 100 },
  a3: { fits: false, say: "This stage is too large for this paper at any scale." },
};

const desk = (scales = SCALES) =>
  render(<SheetDesk exercise={EXERCISE} asked={ASKED} scales={scales} firstSeed={48213} />);
const list = (name: string) => screen.getByRole("combobox", { name });
const addresses = () =>
  within(screen.getByRole("region", { name: "Preview" }))
    .getAllByRole("img")
    .map((image) => image.getAttribute("src") ?? "");

beforeEach(() => window.localStorage.clear());

describe("the choices of a printed sheet", () => {
  it("show the page as it will be printed, and its scale", async () => {
    desk();
    expect(addresses()).toEqual([
      expect.stringMatching(/^\/sheet\/raking-wall\/file\?view=sheet&paper=letter&key=none&/),
    ]);
    expect(screen.getByText(/Drawn at 1:100\. Print at 100 %/)).toBeInTheDocument();
    await userEvent.selectOptions(list("Paper"), "tabloid");
    expect(addresses()[0]).toContain("paper=tabloid");
    expect(screen.getByText(/Drawn at 1:50\./)).toBeInTheDocument();
    await userEvent.selectOptions(list("Paper"), "a3");
    expect(screen.getByText(/too large for this paper/)).toBeInTheDocument();
    expect(screen.queryByRole("region", { name: "Preview" })).toBeNull();
    expect(screen.getByRole("button", { name: "Get the PDF" })).toBeDisabled();
    // A set for a class is of other exercises, whose sheets may fit.
    await userEvent.selectOptions(list("For whom"), "set");
    expect(screen.getByRole("button", { name: "Get the PDF" })).toBeEnabled();
  });

  it("say when the picture is small to draw in, and which paper has it larger", () => {
    desk({ ...SCALES, letter: { fits: true, scale: "1:200", openingMm: 50 } });
    expect(
      screen.getByText(/Drawn at 1:200\. The opening is 50 mm wide, .* On Tabloid it is 200 mm; with fewer points/),
    ).toBeInTheDocument();
  });

  it("begin with a paper that has room for the sheet", () => {
    desk({ ...SCALES, letter: { fits: false, say: "No room." } });
    expect(list("Paper")).toHaveValue("tabloid");
    expect(addresses()[0]).toContain("paper=tabloid");
  });

  it("show every page of the key", async () => {
    desk();
    await userEvent.selectOptions(list("Answer key"), "all");
    expect(addresses().map((address) => /page=(\d)/.exec(address)?.[1])).toEqual(["1", "2", "3", "4"]);
  });

  it("of a class ask how many, and for a set of their own where to begin", async () => {
    desk();
    expect(screen.queryByRole("spinbutton")).toBeNull();
    await userEvent.selectOptions(list("For whom"), "copies");
    expect(screen.getAllByRole("spinbutton")).toHaveLength(1);
    await userEvent.selectOptions(list("For whom"), "set");
    const seed = screen.getByRole("spinbutton", { name: "First variant" });
    expect(seed).toHaveValue(48213);
    const sheets = screen.getByRole("spinbutton", { name: "Sheets" });
    await userEvent.clear(sheets);
    await userEvent.type(sheets, "30");
    expect(screen.getByText("28 more sheets like these.")).toBeInTheDocument();
    expect(addresses()).toHaveLength(2);
    expect(addresses()[1]).toMatch(/copies=2&seed=48213&format=svg&page=2/);
    expect(screen.queryByRole("combobox", { name: "File" })).toBeNull();
    expect(screen.getByRole("button", { name: "Get the PDF" })).toHaveAttribute("type", "submit");
  });

  it("of a construction ask for the point", async () => {
    desk();
    await userEvent.selectOptions(list("What"), "construction");
    await userEvent.selectOptions(list("Point"), "A.top");
    expect(addresses()[0]).toContain("view=construction&paper=letter&point=A.top");
    expect(screen.queryByRole("combobox", { name: "Answer key" })).toBeNull();
    await userEvent.selectOptions(list("File"), "svg");
    expect(screen.getByRole("button", { name: "Get the SVG" })).toBeInTheDocument();
  });

  it("are there again on the next sheet", async () => {
    const first = desk();
    await userEvent.selectOptions(list("Paper"), "a4");
    await userEvent.selectOptions(list("Answer key"), "points");
    first.unmount();
    desk();
    expect(list("Paper")).toHaveValue("a4");
    expect(list("Answer key")).toHaveValue("points");
  });

  it("promise this sheet's scale for its copies, and none for a set of others", async () => {
    desk();
    await userEvent.selectOptions(list("For whom"), "copies");
    expect(screen.getByText(/^Drawn at 1:100\./)).toBeInTheDocument();
    await userEvent.selectOptions(list("For whom"), "set");
    expect(screen.getByText(/^Each sheet says its own scale\./)).toBeInTheDocument();
    expect(screen.queryByText(/Drawn at/)).toBeNull();
  });

  it("that cannot be read any more are the usual ones", () => {
    window.localStorage.setItem("plasterline.sheet", '"plan tiff a5"');
    desk();
    expect(list("What")).toHaveValue("plan");
    expect(list("Paper")).toHaveValue("letter");
  });

  it("make a form whose fields are the file's address", async () => {
    const { container } = desk();
    const form = container.querySelector("form");
    expect(form?.getAttribute("action")).toBe("/sheet/raking-wall/file");
    const data = new FormData(form ?? undefined);
    expect([...data.keys()]).toEqual(["view", "paper", "key", "for", "line", "format"]);
  });
});
