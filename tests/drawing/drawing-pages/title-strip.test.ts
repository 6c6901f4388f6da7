import { describe, expect, it } from "vitest";
import { LEAST_WIDTH_MM, STRIP_MM, titleStrip } from "@/lib/drawing/drawing-pages/title-strip";
import { CAP_HEIGHT, letteredWidthMm } from "@/lib/drawing/paper/letter-widths";

const letters = (title: string, name = "Ground plan", widthMm = 200, units: "ft-in" | "m" = "ft-in") =>
  titleStrip(
    { title, units, scale: units === "m" ? "1:50" : "1/4in=1ft", scaleRatio: units === "m" ? 50 : 48 },
    name,
    "A4 sheet",
    widthMm,
  ).flatMap((item) => (item.kind === "lettering" ? [item] : []));
const of = (list: ReturnType<typeof letters>, id: string) => list.filter((each) => each.id.startsWith(id));

describe("the strip at the foot of a drawing", () => {
  it.each([
    ["ft-in", "Feet and inches", `SCALE 1/4" = 1'-0"`],
    ["m", "Metres", "SCALE 1:50"],
  ] as const)("says in %s what is drawn, how large, and on what", (units, said, scale) => {
    const texts = letters("The alcove", "Picture", 200, units).map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(["The alcove", "Picture", said, scale, "Drawn by", "Date"]));
    expect(texts).toContain("A4 sheet. Print at 100 %.");
  });

  it.each([LEAST_WIDTH_MM, 200, 281, 416])("says all of the caution at its size, %s mm wide", (widthMm) => {
    const lines = of(letters("The alcove", "Picture", widthMm), "strip.caution");
    expect(lines.map(({ text }) => text).join(" ")).toBe(
      "A teaching sketch is not a construction drawing: local codes and licensed practice decide.",
    );
    expect(new Set(lines.map(({ heightMm }) => heightMm))).toEqual(new Set([1.7]));
  });

  it.each([
    ["a short title", "The alcove", "The alcove"],
    [
      "a long one, in smaller letters",
      "The house of the three sisters by the old ferry",
      "The house of the three sisters by",
    ],
    ["one without end, cut short", "W".repeat(300), "WWW"],
    ["none", "", ""],
  ])("gives %s its column", (_, title, start) => {
    for (const widthMm of [LEAST_WIDTH_MM, 200, 281]) {
      const [lettered] = of(letters(title, title, widthMm), "strip.title");
      const [named] = of(letters(title, title, widthMm), "strip.name");
      for (const each of [lettered, named]) {
        if (!each) throw new Error("A strip has a title and a name.");
        expect(each.text.startsWith(start)).toBe(true);
        expect(each.text === title || each.text.endsWith("…")).toBe(true);
        expect(each.heightMm).toBeGreaterThanOrEqual(1.4);
        const room = widthMm - 62 - 58 - 6;
        expect(letteredWidthMm(each.text, each.heightMm, each.face ?? "drafting")).toBeLessThanOrEqual(room + 1e-9);
      }
    }
  });

  it("keeps its lines of words apart, tails and all, and inside", () => {
    for (const widthMm of [LEAST_WIDTH_MM, 281]) {
      const list = letters("Happy people by the jetty", "Picture and ground plan", widthMm);
      const middle = ["strip.title", "strip.name", "strip.caution"].flatMap((id) => of(list, id));
      for (const [i, each] of middle.entries()) {
        // The faces' deepest letters, by their own tables: 0.421 of the type in the drafting face, 0.215 in the plain one.
        const face = each.face ?? "drafting";
        const tail = ((face === "drafting" ? 0.421 : 0.215) / CAP_HEIGHT[face]) * each.heightMm;
        const next = middle[i + 1];
        expect(each.at[1] + each.heightMm).toBeLessThan(STRIP_MM);
        expect(each.at[1] - tail).toBeGreaterThan(next ? next.at[1] + next.heightMm : 0);
      }
    }
  });
});
