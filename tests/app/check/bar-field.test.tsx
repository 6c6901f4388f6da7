import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it } from "vitest";
import { BarField, sayBar } from "@/app/check/confirm/bar-field";

describe("the bar on a sheet", () => {
  it.each([
    ["101.6", "ft-in", "Your sheet is printed at its true size."],
    [`4"`, "ft-in", "Your sheet is printed at its true size."],
    ["97", "m", "The sheet is printed at 97 % of its size. Points placed by eye are marked rightly all the same"],
    ["9.7 cm", "m", "The sheet is printed at 97 %"],
    ["10", "m", "The bar cannot be 10 mm long"],
    ["0", "m", "A size is above 0."],
    ["long", "m", "is not a length"],
  ] as const)("of %j is judged", (typed, units, said) => {
    expect(sayBar(typed, units)).toContain(said);
  });

  it("is asked for and answered in words, and nothing is said before it is measured", async () => {
    render(<BarField units="m" />);
    await userEvent.click(screen.getByText("How long is the bar on your sheet?"));
    expect(screen.getByRole("status")).toBeEmptyDOMElement();
    await userEvent.type(screen.getByRole("textbox"), "94");
    expect(screen.getByRole("status")).toHaveTextContent("Print the next sheet at 100 %");
  });
});
