import { fireEvent, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { CompareDrawings } from "@/app/_sheet/compare-drawings";
import type { Compared } from "@/app/_sheet/compare-lists";
import { makeStroke } from "@/lib/drawing/make-stroke";

const line = (id: string, up: number) =>
  makeStroke(id, [
    [0, up],
    [4, up],
  ]);
const COMPARED: Compared = {
  own: [line("own.A~B", 1)],
  finished: [line("finished.A~B", 2)],
  bounds: { left: -1, right: 5, bottom: 0, top: 3 },
  scaleRatio: 48,
};

function show({ phone = false, plane = "picture" }: { phone?: boolean; plane?: "picture" | "plan" } = {}) {
  vi.stubGlobal("matchMedia", () => ({ matches: phone }));
  const { container } = render(<CompareDrawings compared={COMPARED} plane={plane} />);
  const laid = () => container.querySelector<HTMLElement>(".compare")?.style.getPropertyValue("--laid");
  return { container, laid, slider: screen.getByRole("slider") };
}

beforeEach(() => vi.unstubAllGlobals());

describe("one drawing laid over the other", () => {
  it("shows the student's drawing and the finished one in one window, so that scale and height agree", () => {
    const { container } = show();
    const own = screen.getByRole("img", { name: "Your drawing." });
    const finished = screen.getByRole("img", { name: "The finished picture." });
    expect(own.getAttribute("viewBox")).toBe(finished.getAttribute("viewBox"));
    expect(container.querySelectorAll("[data-stroke='own.A~B']")).toHaveLength(2);
    expect(container.querySelectorAll("[data-stroke='finished.A~B']")).toHaveLength(1);
  });

  it("begins with the finished one alone beside the student's, and on a phone with half laid over", () => {
    expect(show().laid()).toBe("0%");
    document.body.replaceChildren();
    expect(show({ phone: true }).laid()).toBe("50%");
  });

  it("has a slider with a name, whose value is said in words", () => {
    const { slider } = show();
    expect(slider).toHaveAccessibleName("Lay yours over the finished picture");
    expect(slider).toHaveAttribute("aria-valuetext", "only the finished one is seen");
    fireEvent.change(slider, { target: { value: "30" } });
    expect(slider).toHaveAttribute("aria-valuetext", "yours on the left 30 percent, the finished one on the rest");
    fireEvent.change(slider, { target: { value: "100" } });
    expect(slider).toHaveAttribute("aria-valuetext", "only yours is seen");
  });

  it("is reached by the Tab key and lays over as far as the slider says", async () => {
    const { slider, laid } = show();
    await userEvent.tab();
    expect(slider).toHaveFocus();
    fireEvent.change(slider, { target: { value: "64" } });
    expect(laid()).toBe("64%");
    expect(screen.getByText("Yours left of the line, finished right of it")).toBeVisible();
  });

  it("follows a pointer dragged across the drawing, and stops at its ends", () => {
    const { container, slider, laid } = show();
    const stack = container.querySelector(".compare-stack") as HTMLElement;
    stack.getBoundingClientRect = () => ({ left: 100, width: 400 }) as DOMRect;
    fireEvent.pointerDown(stack, { clientX: 200, buttons: 1 });
    expect(laid()).toBe("25%");
    fireEvent.pointerMove(stack, { clientX: 400, buttons: 1 });
    expect(slider).toHaveValue("75");
    fireEvent.pointerMove(stack, { clientX: 9000, buttons: 1 });
    expect(laid()).toBe("100%");
    fireEvent.pointerMove(stack, { clientX: 100, buttons: 0 });
    expect(laid()).toBe("100%");
  });

  it("speaks of a plan where a plan was read", () => {
    show({ plane: "plan" });
    expect(screen.getByRole("img", { name: "The plan as you read it." })).toBeInTheDocument();
    expect(screen.getByRole("slider", { name: "Lay yours over the finished plan" })).toBeInTheDocument();
  });
});
