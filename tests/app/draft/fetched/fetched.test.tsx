import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { Fetched } from "@/app/draft/fetched/fetched";
import { fetchAhead, namePart } from "@/app/draft/fetched/part";

type Given = { readonly words: string };
const Words = ({ words }: Given) => <p>{words}</p>;

function show(part: ReturnType<typeof namePart<Given>>, words: string) {
  return render(
    // biome-ignore lint/a11y/noNoninteractiveTabindex: as on the desk, where what scrolls is reached by keys
    <section tabIndex={0} aria-label="Beside">
      <Fetched part={part} given={{ words }} />
    </section>,
  );
}

describe("a part that is fetched when it is first shown", () => {
  it("has its place held, comes, and is at hand the next time", async () => {
    const bring = vi.fn(async () => Words);
    const part = namePart("Notes", bring);
    const { unmount } = show(part, "first");
    expect(screen.getByRole("status")).toHaveTextContent("Notes in a moment…");
    expect(await screen.findByText("first")).toBeVisible();
    unmount();
    show(part, "again");
    // At once, without waiting for anything.
    expect(screen.getByText("again")).toBeVisible();
    expect(bring).toHaveBeenCalledTimes(1);
  });

  it("says when it does not come, is asked for anew, and leaves the keys where they were", async () => {
    let network = "away";
    const part = namePart("Notes", async () => {
      if (network === "away") throw new Error("away");
      return Words;
    });
    show(part, "come");
    expect(await screen.findByText(/what this takes could not be fetched/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Try again" }));
    expect(await screen.findByText(/what this takes could not be fetched/)).toBeVisible();
    network = "there";
    await userEvent.click(screen.getByRole("button", { name: "Try again" }));
    expect(await screen.findByText("come")).toBeVisible();
    expect(screen.getByRole("region", { name: "Beside" })).toHaveFocus();
  });

  it("fetched ahead, is there as soon as it is shown; ahead and in vain, says so only where it is shown", async () => {
    const part = namePart("Notes", async () => Words);
    fetchAhead(part);
    await vi.waitFor(() => expect(part.here()).toBe(Words));
    show(part, "ahead");
    expect(screen.getByText("ahead")).toBeVisible();
    fetchAhead(namePart<Given>("Notes", () => Promise.reject(new Error("away"))));
  });

  it("is not there until it comes, where it has no place", async () => {
    const { container } = show(
      namePart<Given>(null, async () => Words),
      "drawn",
    );
    expect(container.querySelector("section")).toBeEmptyDOMElement();
    expect(await screen.findByText("drawn")).toBeVisible();
  });
});
