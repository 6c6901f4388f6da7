import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { DraftingDesk } from "@/app/draft/drafting-desk";
import type { Asked } from "@/app/draft/seen/messages";
import { drawVisibleSet } from "@/lib/drawing/draw-visible-set";

/** Works out in the page what a browser would beside it. */
class Beside {
  onmessage: ((event: { readonly data: unknown }) => void) | null = null;
  postMessage(asked: Asked) {
    setTimeout(() => this.onmessage?.({ data: drawVisibleSet(asked) }));
  }
  terminate() {
    this.onmessage = null;
  }
}

beforeEach(() => {
  window.localStorage.clear();
  vi.stubGlobal("Worker", Beside);
  vi.stubGlobal("matchMedia", () => ({ matches: false }));
  vi.stubGlobal(
    "ResizeObserver",
    class {
      observe() {}
      disconnect() {}
    },
  );
});

const press = (name: string) => userEvent.click(screen.getByRole("button", { name }));
const linesOf = (wall: string) =>
  document.querySelectorAll(`#picture-drawing [data-layer="wall.${wall}"] [data-stroke]`).length;

async function type(corners: readonly Readonly<Record<string, string>>[]) {
  for (const lines of corners) {
    for (const [label, text] of Object.entries(lines)) await userEvent.type(screen.getByLabelText(label), text);
    await press("Set as typed");
  }
}

describe("while points are chosen for the exercise", () => {
  it("the picture is seen through, says so, and is afterwards what was chosen", async () => {
    render(<DraftingDesk library={null} />);
    await press("Draw");
    await press("Draw walls");
    // One wall stands behind another that hides it.
    await type([
      { Across: "-10'", Upstage: "4'" },
      { Along: "20'", Angle: "0" },
    ]);
    await press("End the run");
    await type([
      { Across: "-3'", Upstage: "9'" },
      { Along: "6'", Angle: "0" },
    ]);
    await press("End the run");
    await press("Put the pencil down");
    await vi.waitFor(() => expect(linesOf("W1")).toBeGreaterThan(0));
    await vi.waitFor(() => expect(linesOf("W2")).toBe(0));
    expect(screen.getByLabelText("See through the set")).not.toBeChecked();

    await press("Make it an exercise");
    const held = screen.getByLabelText("See through the set, as long as points are chosen");
    expect(held).toBeChecked();
    expect(held).toBeDisabled();
    expect(linesOf("W2")).toBeGreaterThan(0);

    await press("On the plan");
    expect(screen.getByLabelText("See through the set")).not.toBeChecked();
    await vi.waitFor(() => expect(linesOf("W2")).toBe(0));

    await userEvent.click(screen.getByLabelText("See through the set"));
    await press("Make it an exercise");
    await press("On the plan");
    expect(screen.getByLabelText("See through the set")).toBeChecked();
    expect(linesOf("W2")).toBeGreaterThan(0);
  });
});
