import { render, screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { UnitList } from "@/app/_home/unit-list";
import { courseExercise } from "@/tests/browser/drive";

describe("the register of sheets", () => {
  it("gives every sheet its three ways: practise it, demonstrate it, print it, each told apart by name", () => {
    const sheets = ["square-and-parallel", "water-steps"].map(courseExercise);
    render(<UnitList exercises={sheets} />);
    for (const { id, title } of sheets) {
      expect(screen.getByRole("link", { name: title })).toHaveAttribute("href", `/practise/${id}`);
      expect(screen.getByRole("link", { name: `Demonstrate: ${title}` })).toHaveAttribute("href", `/demonstrate/${id}`);
      expect(screen.getByRole("link", { name: `Print: ${title}` })).toHaveAttribute("href", `/sheet/${id}`);
    }
  });
});
