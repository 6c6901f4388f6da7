import { readFileSync } from "node:fs";
import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { setAside, takeUp } from "@/app/_parts/own-exercise/set-aside";
import { CopyToDesk } from "@/app/draft/copy/copy-to-desk";
import { keptPlans, lastOpen } from "@/app/draft/kept/kept-plans";
import { pageOf } from "@/app/practise/[id]/page-of";
import { OwnPractise } from "@/app/practise/draft/own-practise";
import { packText } from "@/lib/draft/exercise-desk/pack-text";

const TEXT = readFileSync("tests/fixtures/tide-office.json", "utf8");

function open(address: string) {
  window.history.replaceState(null, "", address);
}

beforeEach(() => {
  window.localStorage.clear();
  vi.stubGlobal("matchMedia", () => ({ matches: false }));
  vi.stubGlobal(
    "ResizeObserver",
    class {
      observe() {}
      disconnect() {}
    },
  );
});

describe("an exercise set aside", () => {
  it("goes by a name that follows from its text; the seventh takes the first one's place", () => {
    const shelf = window.localStorage;
    const ids = Array.from({ length: 7 }, (_, i) => setAside(shelf, `exercise ${i}`) ?? "");
    expect(new Set(ids).size).toBe(7);
    expect(takeUp(shelf, ids[0] ?? "")).toBeNull();
    expect(takeUp(shelf, ids[1] ?? "")).toBe("exercise 1");
    expect(setAside(shelf, "exercise 6")).toBe(ids[6]);
    expect(setAside(null, "exercise")).toBeNull();
  });
});

describe("Practise on an exercise of one's own", () => {
  it("opens what the desk set aside, and leaves the record and the course alone", async () => {
    open(`/practise/draft?kept=${setAside(window.localStorage, TEXT)}`);
    render(<OwnPractise />);
    expect(await screen.findByRole("heading", { name: "The tide office" })).toBeVisible();
    screen.getByRole("application", { name: /^Picture/ }).focus();
    await userEvent.keyboard("{ArrowLeft}{Enter}");
    expect(Object.keys(window.localStorage).filter((key) => /attempt|record/.test(key))).toEqual([
      "plasterline.own.attempt",
    ]);
    expect(pageOf("/sheet", { own: "a-1" }, "tide-office")).toBe("/sheet/draft?kept=a-1");
    expect(pageOf("/sheet", { own: null }, "tide-office")).toBeNull();
    expect(pageOf("/sheet", [1, 2], "tide-office")).toBe("/sheet/tide-office");
  });

  it("opens one that came as a link", async () => {
    open(`/practise/draft#link=${await packText(TEXT)}`);
    render(<OwnPractise />);
    expect(await screen.findByRole("heading", { name: "The tide office" })).toBeVisible();
  });

  it("says why there is none, and what its author has to mend", async () => {
    open("/practise/draft?kept=none");
    const none = render(<OwnPractise />);
    expect(await screen.findByText(/^This browser does not keep it any more/)).toBeVisible();
    none.unmount();
    open("/practise/draft#link=AAAA");
    const cut = render(<OwnPractise />);
    expect(await screen.findByText(/^The link did not arrive whole/)).toBeVisible();
    cut.unmount();
    const unsound = JSON.stringify({ ...JSON.parse(TEXT), task: { kind: "plan-to-picture", marks: ["X.foot"] } });
    open(`/practise/draft#link=${await packText(unsound)}`);
    render(<OwnPractise />);
    expect(await screen.findByText(/X\.foot names no point of the plan/)).toBeVisible();
  });
});

describe("a plan that comes as a link", () => {
  it("is copied to the desk beside the plans that are there", async () => {
    open(`/draft/copy#link=${await packText(TEXT)}`);
    const left = vi.spyOn(console, "error").mockImplementation(() => {});
    render(<CopyToDesk />);
    await userEvent.click(await screen.findByRole("button", { name: "Copy it to your desk" }));
    await waitFor(() => expect(keptPlans(window.localStorage)).toHaveLength(1));
    expect(lastOpen(window.localStorage)).toBe("1");
    // The simulated browser cannot leave its page, and says so.
    left.mockRestore();
  });
});
