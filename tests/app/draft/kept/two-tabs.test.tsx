import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { findShelf, type Shelf } from "@/app/_parts/kept-work/shelf";
import { createDesk } from "@/app/draft/desk/desk-store";
import { DraftingDesk } from "@/app/draft/drafting-desk";
import { keepPlan, keptPlans } from "@/app/draft/kept/kept-plans";

/** What reads kept plans is fetched the first time, which takes a busy machine a while, milliseconds. */
const FETCHED_MS = 8000;

const shelf = () => findShelf() as Shelf;

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

async function openDesk() {
  render(<DraftingDesk library={null} />);
  const keeps = () => expect(document.querySelector("[data-state=keeping]")).not.toBeNull();
  await waitFor(keeps, { timeout: FETCHED_MS });
}

/** Another tab keeps a plan of its own making under a key. */
function keepElsewhere(key: string, title: string, at: string) {
  const desk = createDesk("m");
  desk.getState().apply({ edit: "set-words", words: { title } });
  keepPlan(shelf(), key, desk.getState(), at);
}

async function setApron(length: string) {
  const line = screen.getByLabelText("Apron");
  await userEvent.clear(line);
  await userEvent.type(line, `${length}{Enter}`);
}

const titles = () =>
  keptPlans(shelf())
    .map(({ title }) => title)
    .toSorted();
const PARTED = /changed in another tab too/;

describe("one browser's drafting desk in two tabs", () => {
  it("keeps both plans where both tabs began with nothing kept", async () => {
    await openDesk();
    keepElsewhere("1", "Drawn elsewhere", "2026-03-01T10:00:00.000Z");
    await setApron("2'");
    await waitFor(() => expect(titles()).toEqual(["Drawn elsewhere", "New set"]));
    expect(screen.getByText(PARTED)).toBeInTheDocument();
  });

  it("keeps both where one plan was changed in both, and goes on with its own", async () => {
    keepElsewhere("1", "The ferry house", "2026-03-01T10:00:00.000Z");
    await openDesk();
    expect(screen.getByRole("heading", { level: 1 })).toHaveTextContent("The ferry house");
    keepElsewhere("1", "The ferry house, changed elsewhere", "2026-03-01T10:05:00.000Z");
    await setApron("2 m");
    await waitFor(() => expect(titles()).toEqual(["The ferry house", "The ferry house, changed elsewhere"]));
    expect(screen.getByText(PARTED)).toBeInTheDocument();
    await setApron("3 m");
    await waitFor(() => {
      const own = keptPlans(shelf()).find(({ title }) => title === "The ferry house");
      const kept = JSON.parse(window.localStorage.getItem(`plasterline.draft.plan.${own?.key}`) ?? "{}");
      expect(kept.now.stage.apron).toBe(3);
    });
    expect(titles()).toHaveLength(2);
  });

  it("says nothing where no other tab has kept anything", async () => {
    keepElsewhere("1", "The ferry house", "2026-03-01T10:00:00.000Z");
    await openDesk();
    await setApron("2 m");
    await waitFor(() => expect(keptPlans(shelf())[0]?.changed).not.toBe("2026-03-01T10:00:00.000Z"));
    await setApron("3 m");
    await waitFor(() => expect(titles()).toEqual(["The ferry house"]));
    expect(screen.queryByText(PARTED)).toBeNull();
  });
});
