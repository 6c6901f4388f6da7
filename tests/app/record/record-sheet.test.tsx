import { act, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { keepFinished } from "@/app/_parts/kept-work/keep";
import { shelfChanged } from "@/app/_parts/kept-work/use-shelf";
import { RecordSheet } from "@/app/record/record-sheet";
import { type AttemptRecord, RECORD_FORMAT } from "@/lib/progress/record";
import { aMark, aRecord, day, evidenceFor, marksFor } from "../../progress/records";

const COURSE = [
  { id: "frame", title: "Reading the frame" },
  { id: "points", title: "Points on the floor" },
];

beforeEach(() => {
  window.localStorage.clear();
  vi.stubGlobal(
    "ResizeObserver",
    class {
      observe() {}
      disconnect() {}
    },
  );
  act(shelfChanged);
});

function keepAll(records: readonly AttemptRecord[]) {
  for (const record of records) keepFinished(window.localStorage, record);
}

/** An exercise of two marks: so far off in depth and across, millimetres, and so deep for each true depth. */
function drawn(exercise: string, n: number, depthMm: number, acrossMm: number, depthRatio: number): AttemptRecord {
  const mark = aMark({ within: false, depthMm, acrossMm, depthRatio, evidence: [evidenceFor("depth-by-eye", false)] });
  return aRecord(exercise, day(n), [mark, mark]);
}

/** Depths from far too shallow to nearly true, over five days. */
const NEARING = [
  drawn("frame", 0, -8, 1, 0.5),
  drawn("points", 1, -6, 1.5, 0.6),
  drawn("frame", 2, -4, 1, 0.7),
  drawn("points", 3, -2, 0.5, 0.84),
  drawn("frame", 4, -1, 1, 0.95),
];

describe("the record", () => {
  it("says in plain words that nothing is drawn yet, and how to begin", () => {
    render(<RecordSheet catalogue={COURSE} />);
    expect(screen.getByText(/^Nothing is drawn yet\./)).toBeVisible();
    expect(screen.getByRole("link", { name: "Start: Reading the frame" })).toHaveAttribute("href", "/practise/frame");
    expect(screen.queryByRole("img")).toBeNull();
  });

  it("tells scores kept without their marks from a record", () => {
    window.localStorage.setItem(
      "plasterline.records",
      JSON.stringify({ frame: { times: 1, best: 70, last: 70, on: day(0) } }),
    );
    render(<RecordSheet catalogue={COURSE} />);
    expect(screen.getByText(/only the scores were kept/)).toBeVisible();
  });

  it("draws depth against across with a mark and a line of its own for each, and says both in words", () => {
    keepAll(NEARING);
    render(<RecordSheet catalogue={COURSE} />);
    const chart = screen.getByRole("img", { name: /^Chart of errors in millimetres on paper/ });
    expect(chart).toHaveAccessibleName(
      /Off in depth: 2\.0 mm on paper over your last three exercises, and getting smaller/,
    );
    expect(chart.querySelectorAll("circle")).toHaveLength(5);
    expect(chart.querySelectorAll("rect.symbol")).toHaveLength(5);
    expect(chart.querySelectorAll("[data-trend]")).toHaveLength(2);
    expect(screen.getByText(/^Off across: 1\.0 mm/)).toBeVisible();
  });

  it("draws the ratio's trend rising towards 1, on the shallow side of it", () => {
    keepAll(NEARING);
    render(<RecordSheet catalogue={COURSE} />);
    const chart = screen.getByRole("img", { name: /^Chart of drawn depth over true depth/ });
    const trend = chart.querySelector("[data-trend=ratio]")?.getAttribute("d") ?? "";
    const [, fromY = 0, , toY = 0] = (trend.match(/[\d.]+/g) ?? []).map(Number);
    const trueY = Number(/M\S+ (\S+)H/.exec(chart.querySelector(".chart-true")?.getAttribute("d") ?? "")?.[1]);
    expect(fromY).toBeGreaterThan(toY);
    expect(toY).toBeGreaterThan(trueY);
    expect(screen.getByText(/^Your depths are too shallow: drawn at 84 %/)).toBeVisible();
  });

  it("gives each drawing's figures as a table, the last exercise first", async () => {
    keepAll(NEARING);
    render(<RecordSheet catalogue={COURSE} />);
    await userEvent.click(screen.getByText("These errors as a table"));
    const rows = within(await screen.findByRole("table")).getAllByRole("row");
    expect(
      rows
        .map((row) =>
          within(row)
            .getAllByText(/./)
            .map((cell) => cell.textContent),
        )
        .slice(0, 2),
    ).toEqual([
      ["No.", "Day", "Exercise", "Depth, mm", "Across, mm", "Height, mm"],
      ["5", "9 Jan 2026", "Reading the frame", "1.0", "1.0", "none"],
    ]);
    expect(rows).toHaveLength(6);
    await userEvent.click(screen.getByText("This curve as a table"));
    expect(await screen.findByRole("cell", { name: "50 % too shallow" })).toBeVisible();
  });

  it("tells a mastered skill from a shaky one by word, by number and by the bar's tone", () => {
    keepAll([
      aRecord("frame", day(0), [...marksFor("true-size", "++++"), ...marksFor("depth-by-eye", "du")]),
      aRecord("points", day(1), marksFor("depth-by-eye", "uu")),
    ]);
    render(<RecordSheet catalogue={COURSE} />);
    expect(screen.getByText("1 skill mastered, 1 shaky, 14 not begun.")).toBeVisible();
    const row = (name: string) => screen.getByText(name).closest("li") as HTMLElement;
    expect(row("Depth by eye")).toHaveTextContent("Shaky: your last four marks were off");
    expect(row("Depth by eye").querySelector(".bar-fill")).toHaveAttribute("fill", "url(#hatch-depth-by-eye)");
    expect(row("True size on the plaster line")).toHaveTextContent(/99 %Mastered/);
    expect(row("True size on the plaster line").querySelector(".bar-fill")).toHaveAttribute("fill", "var(--graphite)");
  });

  it("shows when a habit was seen, when it could have been, and that it went away", () => {
    const claimed = { habits: [{ id: "too-shallow", odds: 9, marks: ["A.foot"], amount: null }] };
    const tells = ["too-shallow"];
    keepAll([
      aRecord("frame", day(0), [aMark()], { ...claimed, tells }),
      ...[1, 2, 3].map((n) => aRecord("points", day(n), [aMark()], { tells })),
    ]);
    render(<RecordSheet catalogue={COURSE} />);
    expect(screen.getByText("One habit seen in your marks: 0 still there, 0 fading, 1 gone.")).toBeVisible();
    const strip = screen.getByText("Depths too shallow").closest("li") as HTMLElement;
    expect(strip).toHaveTextContent(/gone/);
    expect(strip.querySelectorAll(".strip-seen")).toHaveLength(1);
    expect(strip.querySelectorAll(".strip-not")).toHaveLength(3);
  });

  it("draws a single exercise without a trend, and says from when there is one", () => {
    keepAll(NEARING.slice(0, 1));
    render(<RecordSheet catalogue={COURSE} />);
    expect(document.querySelector("[data-trend]")).toBeNull();
    expect(screen.getAllByText(/A trend is drawn from the fourth exercise on\./)).toHaveLength(2);
  });

  it.each([
    "{",
    "7",
    JSON.stringify({
      format: RECORD_FORMAT,
      exercise: "frame",
      when: day(0),
      score: 50,
      marks: [{ point: 3 }, null, "x"],
    }),
    JSON.stringify({
      format: RECORD_FORMAT,
      exercise: "gone-from-the-course",
      when: day(0),
      score: 50,
      marks: [{ point: "A.foot", depthMm: 1e300, depthRatio: 1e-300, evidence: [{ skill: "", part: "no" }] }],
      habits: [{ id: "unknown-idea" }],
    }),
  ])("stays whole with %j among what is kept", (text) => {
    keepAll(NEARING);
    window.localStorage.setItem(`plasterline.record.${day(2.5)}.bad`, text);
    render(<RecordSheet catalogue={COURSE} />);
    expect(screen.getByRole("heading", { name: "Too shallow, too deep" })).toBeVisible();
    expect(document.body.innerHTML).not.toMatch(/NaN|Infinity|undefined/);
  });
});
