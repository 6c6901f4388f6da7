import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, expect, it } from "vitest";
import { KeepWork } from "@/app/_home/keep-work";
import { PLAN_KEY } from "@/app/_parts/kept-work/shelf";

beforeEach(() => window.localStorage.clear());

const rubOut = async () => {
  await userEvent.click(await screen.findByRole("button", { name: "Rub it all out" }));
  const asked = document.body.textContent ?? "";
  await userEvent.click(screen.getByRole("button", { name: "Yes, rub out everything" }));
  return { asked, said: screen.getByRole("status").textContent };
};

it("says before and after that the plans on the drafting desk stay, where there are any", async () => {
  window.localStorage.setItem(`${PLAN_KEY}1`, "{}");
  render(<KeepWork />);
  const { asked, said } = await rubOut();
  expect(asked).toContain("The plans on the drafting desk stay");
  expect(said).toMatch(/^Rubbed out: .* The plans on the drafting desk stay; in Draft, under Plans/);
  expect(window.localStorage.getItem(`${PLAN_KEY}1`)).toBe("{}");
});

it("says nothing of plans where there are none", async () => {
  render(<KeepWork />);
  const { asked, said } = await rubOut();
  expect(asked + said).not.toContain("drafting desk");
});
