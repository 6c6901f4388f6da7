import { act, fireEvent, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { Demonstrate } from "@/app/demonstrate/[id]/demonstrate";
import { demonstrationSteps } from "@/lib/drawing/demonstration/demonstration-steps";
import { readTideOffice } from "../../fixtures/tide-office";

const exercise = readTideOffice(["/task", { kind: "plan-to-picture", marks: ["A.foot", "A.top"] }]);
const steps = demonstrationSteps(exercise);

beforeEach(() => {
  window.localStorage.clear();
  window.sessionStorage.clear();
  window.history.replaceState(null, "", "/demonstrate/tide-office");
  vi.stubGlobal("matchMedia", () => ({ matches: false }));
  vi.stubGlobal(
    "ResizeObserver",
    class {
      observe() {}
      disconnect() {}
    },
  );
  // The simulated browser opens a dialog, but knows no modal one.
  HTMLDialogElement.prototype.showModal ??= function showModal(this: HTMLDialogElement) {
    this.open = true;
  };
  HTMLDialogElement.prototype.close ??= function close(this: HTMLDialogElement) {
    this.open = false;
  };
});

const press = (key: string) => fireEvent.keyDown(document.body, { key });
const title = () => within(screen.getByRole("region", { name: "The step" })).getByRole("heading").textContent;
const at = () => document.querySelector<HTMLElement>(".demonstration")?.dataset.step;

describe("the Demonstrate page", () => {
  it.each([
    { on: "PageDown", back: "PageUp" },
    { on: " ", back: "ArrowLeft" },
    { on: "ArrowRight", back: "ArrowUp" },
    { on: "ArrowDown", back: "PageUp" },
  ])("goes on with $on and back with $back", ({ on, back }) => {
    render(<Demonstrate exercise={exercise} />);
    expect(title()).toBe("The ground plan");
    press(on);
    press(on);
    expect(title()).toBe(steps[2]?.title);
    press(back);
    expect(title()).toBe(steps[1]?.title);
    press("End");
    expect(title()).toBe("The finished picture");
    press("Home");
    expect(title()).toBe("The ground plan");
  });

  it("opens at the step of its address, and keeps the address with it", () => {
    window.history.replaceState(null, "", "/demonstrate/tide-office#step=5");
    render(<Demonstrate exercise={exercise} />);
    expect(at()).toBe("5");
    press("PageDown");
    expect(window.location.hash).toBe("#step=6");
  });

  it("says each step, and says it to those who do not see it", () => {
    render(<Demonstrate exercise={exercise} />);
    for (const step of steps) {
      expect(screen.getByText(step.sentence)).toBeVisible();
      expect(screen.getByRole("status")).toHaveTextContent(step.sentence);
      press("PageDown");
    }
  });

  it("blanks the screen with B or a full stop, and a remote's key lights it on the same step", () => {
    render(<Demonstrate exercise={exercise} />);
    for (const key of ["b", "."]) {
      press(key);
      expect(screen.getByRole("button", { name: /^The screen is blank/ })).toBeInTheDocument();
      press("PageDown");
      expect(screen.queryByRole("button", { name: /^The screen is blank/ })).toBeNull();
      expect(at()).toBe("1");
    }
  });

  it("jumps to a corner from the list", async () => {
    render(<Demonstrate exercise={exercise} />);
    press("c");
    const card = screen.getByRole("dialog", { name: "Corners" });
    await userEvent.click(within(card).getByRole("button", { name: /The top of A/ }));
    expect(title()).toBe("The top of A");
    expect(screen.queryByRole("dialog")).toBeNull();
  });

  it("has a card of keys, on which the letters can be turned off", async () => {
    render(<Demonstrate exercise={exercise} />);
    press("?");
    await userEvent.click(screen.getByRole("checkbox", { name: "Letters are keys" }));
    await userEvent.click(screen.getByRole("button", { name: "Put away" }));
    press("b");
    expect(screen.queryByRole("button", { name: /^The screen is blank/ })).toBeNull();
    press("PageDown");
    expect(at()).toBe("2");
  });

  it("lets the class try by keys alone: aim, set down, show, what it means, on", () => {
    render(<Demonstrate exercise={exercise} />);
    press("t");
    expect(title()).toBe("The foot of A");
    press("ArrowLeft");
    press("ArrowLeft");
    press("Enter");
    expect(screen.getByRole("list", { name: "Guesses" })).toHaveTextContent("1");
    expect(document.querySelector("[data-true]")).toBeNull();
    press("PageDown");
    expect(document.querySelector("[data-true]")).not.toBeNull();
    expect(screen.getByRole("button", { name: /^1: \d+\.\d mm off$/ })).toBeVisible();
    expect(document.querySelector("[data-verdict]")).toHaveTextContent(/mm (low|high).*There, the foot of A stands/);
    press("PageDown");
    expect(screen.queryByRole("list", { name: "Guesses" })).toBeNull();
    expect(document.querySelector("[data-true]")).toBeNull();
  });

  it("writes initials on a guess, and takes the last one back", async () => {
    render(<Demonstrate exercise={exercise} />);
    press("t");
    await userEvent.type(screen.getByLabelText("Initials"), "Bt");
    press("ArrowUp");
    press("Enter");
    expect(document.querySelector("[data-guess=Bt]")).not.toBeNull();
    press("Backspace");
    expect(document.querySelector("[data-guess]")).toBeNull();
  });

  it("leaves Space and Enter to a press in focus, and letters to a field", async () => {
    render(<Demonstrate exercise={exercise} />);
    const corners = screen.getByRole("button", { name: "Corners" });
    corners.focus();
    fireEvent.keyDown(corners, { key: " " });
    expect(at()).toBe("1");
    press("t");
    const field = screen.getByLabelText("Initials");
    await userEvent.type(field, "b");
    expect(field).toHaveValue("b");
    expect(screen.queryByRole("button", { name: /^The screen is blank/ })).toBeNull();
  });

  it("has a press for everything that a key does", async () => {
    render(<Demonstrate exercise={exercise} />);
    const presses = within(screen.getByRole("navigation", { name: "Presses" }));
    await userEvent.click(presses.getByRole("button", { name: "On" }));
    expect(at()).toBe("2");
    await userEvent.click(presses.getByRole("button", { name: "Ring" }));
    expect(document.querySelector(".pointer-ring")).not.toBeNull();
    await userEvent.click(presses.getByRole("button", { name: "Red pencil" }));
    expect(document.querySelector<HTMLElement>(".demonstration")?.dataset.pencil).toBe("red");
    await userEvent.click(presses.getByRole("button", { name: "You try" }));
    expect(title()).toBe("The foot of A");
    expect(presses.getByRole("link", { name: "Handout" })).toHaveAttribute("href", "/demonstrate/tide-office/handout");
  });

  it("turns the house lights down and up again, as every page's look is kept", () => {
    render(<Demonstrate exercise={exercise} />);
    press("d");
    expect(document.documentElement.dataset.light).toBe("dark");
    expect(document.cookie).toContain("dark");
    press("d");
    expect(document.documentElement.dataset.light).toBe("paper");
  });

  it("lets the presses go after a while, and brings them back near the upper edge", () => {
    vi.useFakeTimers();
    render(<Demonstrate exercise={exercise} />);
    const place = document.querySelector<HTMLElement>(".controls-place");
    expect(place?.dataset.seen).toBe("true");
    act(() => vi.advanceTimersByTime(4000));
    expect(place?.dataset.seen).toBeUndefined();
    press("m");
    expect(place?.dataset.seen).toBe("true");
    vi.useRealTimers();
  });
});
