import { fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { DraftingDesk } from "@/app/draft/drafting-desk";

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

/** What reads kept plans is fetched the first time, which takes a busy machine a while, milliseconds. */
const FETCHED_MS = 8000;

async function openDesk() {
  const opened = render(<DraftingDesk library={null} />);
  const keeps = () => expect(document.querySelector("[data-state=keeping]")).not.toBeNull();
  await waitFor(keeps, { timeout: FETCHED_MS });
  return opened;
}

const button = (name: string) => screen.getByRole("button", { name });
const press = (name: string) => userEvent.click(button(name));
const plan = () => screen.getByRole("application", { name: /^Ground plan/ });

/** Writes on a line and leaves it. */
async function write(label: string, text: string) {
  const line = screen.getByLabelText(label);
  await userEvent.clear(line);
  await userEvent.type(line, `${text}{Enter}`);
}

async function typeCorner(lines: Readonly<Record<string, string>>) {
  for (const [label, text] of Object.entries(lines)) await userEvent.type(screen.getByLabelText(label), text);
  await press("Set as typed");
}

describe("the Draft page", () => {
  it("takes the stage as people write it, and says what it cannot read", async () => {
    await openDesk();
    await write("Opening, wide", "28' 6\"");
    expect(screen.getByLabelText("Opening, wide")).toHaveValue(`28'-6"`);
    await write("Rake", "1 in 24");
    expect(screen.getByLabelText("Rake")).toHaveValue("1 in 24");
    await write("Apron", "three feet");
    expect(screen.getByRole("alert")).toHaveTextContent('"three feet" is not a length');
    expect(screen.getByLabelText("Apron")).toBeInvalid();
    await userEvent.selectOptions(screen.getByLabelText("Measured in"), "Metres");
    expect(screen.getByLabelText("Opening, wide")).toHaveValue("8687 mm");
  });

  it("sets the eye by a seat in the house", async () => {
    await openDesk();
    await userEvent.selectOptions(screen.getByLabelText("Set by"), "a seat in the house");
    await write("Row, from the plaster line", "24'");
    await write("Row's floor, above the stage", "-1'");
    await userEvent.selectOptions(screen.getByLabelText("Set by"), "its distance and height");
    expect(screen.getByLabelText("From the plaster line")).toHaveValue(`24'-0"`);
    // 1.185 m of a seated eye, less the foot that the row lies lower.
    expect(screen.getByLabelText("Above the stage")).toHaveValue(`2'-10 5/8"`);
  });

  it("draws walls from typed corners, and says what is on the plan", async () => {
    await openDesk();
    await press("Draw");
    await press("Draw walls");
    await typeCorner({ Across: "-12'", Upstage: "1'" });
    await typeCorner({ Along: "11'", Angle: "90" });
    await typeCorner({ Along: "24", Angle: "0" });
    await typeCorner({ Along: "eleven", Angle: "-90" });
    expect(screen.getByRole("alert")).toHaveTextContent('"eleven" is not a length');
    await press("End the run");
    expect(screen.getByText("2 walls are on the plan.")).toBeInTheDocument();
    await press("On the plan");
    expect(screen.getByLabelText(`Wall W2, B to C, 24'-0" long`)).not.toBeChecked();
    expect(screen.getByLabelText(`Corner C, 12'-0" stage left, 12'-0" upstage`)).toBeInTheDocument();
  });

  it("steps along the grid by keys, and sets corners down with Enter", async () => {
    await openDesk();
    await press("Draw");
    await press("Draw walls");
    plan().focus();
    // The pencil begins in the middle of the stage, 12 ft up; each step is 6 in.
    await userEvent.keyboard("{ArrowLeft}{ArrowLeft}{Enter}");
    await userEvent.keyboard("{Shift>}{ArrowRight}{/Shift}{Enter}{Escape}");
    expect(screen.getByText("On the plan: wall W1.")).toBeInTheDocument();
    await press("On the plan");
    expect(screen.getByLabelText(`Wall W1, A to B, 3'-0" long`)).toBeInTheDocument();
  });

  it("changes, copies, mirrors and takes away what is chosen in the list, and undoes all of it", async () => {
    await openDesk();
    await press("Draw");
    await press("Draw walls");
    await typeCorner({ Across: "-12'", Upstage: "1'" });
    await typeCorner({ Along: "10'", Angle: "90" });
    await press("End the run");
    await press("On the plan");
    await userEvent.click(screen.getByLabelText(/^Wall W1/));
    await write("Length", "12' 6\"");
    await write("Name", "return");
    expect(screen.getByRole("heading", { name: "Wall return" })).toBeVisible();
    expect(screen.getByLabelText(`Wall return, A to B, 12'-6" long`)).toBeChecked();
    await press("Copy mirrored");
    expect(screen.getAllByLabelText(/^Wall /)).toHaveLength(2);
    expect(screen.getByLabelText(`Corner D, 12'-0" stage left, 1'-0" upstage`)).toBeInTheDocument();
    await press("Take away");
    expect(screen.getAllByLabelText(/^Wall /)).toHaveLength(1);
    for (let i = 0; i < 4; i++) await press("Undo");
    expect(screen.getByLabelText(`Wall W1, A to B, 10'-0" long`)).toBeInTheDocument();
    await press("Redo");
    expect(screen.getByLabelText(`Wall W1, A to B, 12'-6" long`)).toBeInTheDocument();
  });

  it("puts an opening in by its wall and its distance from either end", async () => {
    await openDesk();
    await press("Draw");
    expect(button("Put in an opening")).toBeDisabled();
    await press("Draw walls");
    await typeCorner({ Across: "-8'", Upstage: "10'" });
    await typeCorner({ Along: "16'", Angle: "0" });
    await press("End the run");
    await press("Put the pencil down");
    await press("Put in an opening");
    await userEvent.selectOptions(screen.getByLabelText("Kind"), "Arch");
    await userEvent.selectOptions(screen.getByLabelText("Wall"), "W1, A to B");
    await write("From B", "3'");
    expect(screen.getByLabelText("From A")).toHaveValue(`8'-0"`);
    await write("From B", "12'");
    expect(screen.getByRole("alert")).toHaveTextContent(`It must stand within the wall: 0 to 11'-0".`);
    await press("Set it down here");
    await press("On the plan");
    expect(screen.getByLabelText(`Arch in W1, 5'-0" wide, 8'-0" from A`)).toBeInTheDocument();
  });

  it("follows a list of walls that is gone through quickly, as by keys", async () => {
    await openDesk();
    await press("Draw");
    await press("Draw walls");
    await typeCorner({ Across: "-8'", Upstage: "10'" });
    await typeCorner({ Along: "16'", Angle: "0" });
    await typeCorner({ Along: "8'", Angle: "-90" });
    await typeCorner({ Along: "16'", Angle: "180" });
    await press("End the run");
    await press("Put the pencil down");
    await press("Put in an opening");
    const walls = screen.getByLabelText("Wall");
    for (const wall of ["W1", "W2", "W3", "W1", "W3"]) {
      // Not one moment between the choices.
      fireEvent.change(walls, { target: { value: wall } });
      expect(walls).toHaveValue(wall);
    }
    expect(screen.getByLabelText("From C")).toHaveValue(`6'-9"`);
  });

  it("cautions about stairs past the usual limits", async () => {
    await openDesk();
    await press("Draw");
    await press("Build a stair");
    expect(screen.getByText(/A teaching sketch is not a construction drawing/)).toBeVisible();
    await write("Riser", '8"');
    expect(screen.getByText(`A riser of 8" is higher than the usual 7".`)).toBeVisible();
  });

  it("has the plan again after a reload, with its undo, and begins another beside it", async () => {
    const first = await openDesk();
    await press("Draw");
    await press("Mark a point");
    await typeCorner({ Across: "3'", Upstage: "5'" });
    first.unmount();
    await openDesk();
    await press("On the plan");
    expect(await screen.findByLabelText(`Point A, 3'-0" stage left, 5'-0" upstage`)).toBeInTheDocument();
    expect(button("Undo")).toBeEnabled();
    await userEvent.click(screen.getByText("Plans"));
    await press("New plan in metres");
    await press("On the plan");
    expect(screen.getByText("Nothing yet. Draw something first.")).toBeVisible();
    const plans = within(document.querySelector(".draft-plans") as HTMLElement);
    expect(plans.getAllByRole("listitem")).toHaveLength(2);
  });
});
