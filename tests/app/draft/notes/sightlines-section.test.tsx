import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it, vi } from "vitest";
import { createDesk } from "@/app/draft/desk/desk-store";
import { DeskContext } from "@/app/draft/desk/draft-context";
import { SightlinesSection } from "@/app/draft/notes/sightlines-section";
import type { Draft } from "@/lib/draft/draft";
import { newDraft } from "@/lib/draft/new-draft";
import { edited } from "../../../draft/sense/make-draft";

/** A back wall with a doorway in it, and wings closed by legs. */
function doorway(): Draft {
  return edited(
    newDraft("ft-in"),
    {
      edit: "add-walls",
      corners: [
        [-4, 4],
        [4, 4],
      ],
      closed: false,
      height: 5,
      thickness: 0,
    },
    {
      edit: "add-opening",
      wall: "W1",
      opening: {
        kind: "passage",
        at: 3,
        width: 2,
        sill: 0,
        head: 2.2,
        depth: null,
        leaves: 1,
        hinge: null,
        swing: "offstage",
      },
    },
  );
}

function open(draft: Draft) {
  const apply = vi.fn(() => null);
  const show = vi.fn();
  const lay = vi.fn();
  const { unmount } = render(
    <DeskContext value={createDesk("ft-in")}>
      <SightlinesSection draft={draft} apply={apply} show={show} lay={lay} />
    </DeskContext>,
  );
  return { apply, show, lay, unmount };
}

it("says nothing until a seat is chosen, then draws and tells what it sees", async () => {
  open(doorway());
  expect(screen.queryByRole("img")).toBeNull();
  await userEvent.selectOptions(screen.getByLabelText("Seen from"), "end of the first row, house left");
  const drawing = await screen.findByRole("img");
  expect(drawing.querySelectorAll("[data-stroke^='sight.through.W1.passage']").length).toBeGreaterThan(1);
  expect(screen.getByText("Through the passage in W1 they see offstage: nothing backs it.")).toBeInTheDocument();
});

const fromSeat = (id: string) => expect.objectContaining({ seat: expect.objectContaining({ id }) });

it("lays what the seat sees over the plan, and takes it off with the seat and with its drawer", async () => {
  const { lay, unmount } = open(doorway());
  await userEvent.selectOptions(screen.getByLabelText("Seen from"), "end of the first row, house left");
  await screen.findByRole("img");
  // It is laid there once it has been drawn beside.
  await waitFor(() => expect(lay).toHaveBeenLastCalledWith(fromSeat("first-left")));
  await userEvent.selectOptions(screen.getByLabelText("Seen from"), "no seat");
  expect(lay).toHaveBeenLastCalledWith(null);
  await userEvent.selectOptions(screen.getByLabelText("Seen from"), "end of the last row, house right");
  await screen.findByRole("img");
  await waitFor(() => expect(lay).toHaveBeenLastCalledWith(fromSeat("last-right")));
  unmount();
  expect(lay).toHaveBeenLastCalledWith(null);
});

it("shows what a remark speaks of, and puts the backing there", async () => {
  const { apply, show } = open(doorway());
  await userEvent.selectOptions(screen.getByLabelText("Seen from"), "end of the first row, house left");
  const remark = (await screen.findByText(/^Through the passage in W1/)).closest("li");
  const [showIt, put] = [...(remark?.querySelectorAll("button") ?? [])];
  await userEvent.click(showIt as HTMLElement);
  expect(show).toHaveBeenCalledWith([{ kind: "opening", wall: "W1", id: "passage" }]);
  await userEvent.click(put as HTMLElement);
  expect(apply).toHaveBeenCalledWith(expect.objectContaining({ edit: "add-masking" }));
});

it("looks from where the author moves the seat, and refuses one on the stage", async () => {
  open(doorway());
  await userEvent.selectOptions(screen.getByLabelText("Seen from"), "end of the first row, house left");
  await screen.findByRole("img");
  const before = screen.getByLabelText("Before the plaster line");
  await userEvent.clear(before);
  await userEvent.type(before, "-2'{Enter}");
  expect(screen.getByRole("alert")).toHaveTextContent("A seat is in the house");
  await userEvent.clear(before);
  await userEvent.type(before, "60'{Enter}");
  await waitFor(() => expect(screen.getByLabelText("Before the plaster line")).toHaveValue(`60'-0"`));
  const beside = screen.getByLabelText("Beside the centre line");
  await userEvent.clear(beside);
  await userEvent.type(beside, "0'{Enter}");
  await waitFor(() => expect(screen.queryByText("Looking from there...")).toBeNull());
  expect(screen.getByRole("img")).toBeInTheDocument();
});
