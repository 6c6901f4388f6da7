import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { SendIfWaiting } from "@/app/_parts/hand-ins/send-if-waiting";
import { keepWaiting, keptWaiting, newWaiting } from "@/app/_parts/hand-ins/waiting";
import type { MarkSet } from "@/lib/exercise/marks";

const MARKS: MarkSet = { format: "plasterline.marks/1", exercise: "alcove", marks: [{ point: "A.foot", at: [1, 2] }] };
const work = (itemId: string, title = "An alcove") =>
  newWaiting({ itemId, memberId: "wim", title, marks: MARKS }, new Date("2026-11-25T09:00:00.000Z"));

type Reply = { readonly ok: boolean; readonly reason?: string; readonly sentence?: string } | "no-network";
let answer: Reply;
const sent: string[] = [];

beforeEach(() => {
  window.localStorage.clear();
  sent.length = 0;
  answer = { ok: true };
  vi.stubGlobal("fetch", async (path: string, { body }: { readonly body: string }) => {
    const { id } = JSON.parse(body) as { readonly id: string };
    sent.push(`${path} ${id}`);
    if (answer === "no-network") throw new TypeError("no network");
    const receipt = { id, receivedAt: "2026-11-25T09:00:01.000Z", late: false, attemptsLeft: null };
    return { json: async () => (answer !== "no-network" && answer.ok ? { ok: true, receipt } : answer) };
  });
});
afterEach(() => vi.unstubAllGlobals());

it("does nothing where nothing waits", async () => {
  const { container } = render(<SendIfWaiting />);
  await new Promise((resolve) => setTimeout(resolve, 50));
  expect(container.innerHTML).toBe("");
  expect(sent).toEqual([]);
});

it("sends what waits and says so", async () => {
  const one = work("a");
  keepWaiting(window.localStorage, one);
  render(<SendIfWaiting />);
  expect(await screen.findByText(/Handed in just now: 1 exercise/)).toBeTruthy();
  expect(sent).toEqual([`/api/class/hand-in ${one.id}`]);
  expect(keptWaiting(window.localStorage)).toEqual([]);
});

it("names what still waits in one line, and sends it on a press", async () => {
  answer = "no-network";
  for (const each of [work("a"), work("b", "A bay")]) keepWaiting(window.localStorage, each);
  render(<SendIfWaiting />);
  const line = await screen.findByRole("status");
  expect(line.textContent).toContain("Not handed in yet: ");
  expect(line.textContent).toMatch(/(An alcove and A bay|A bay and An alcove)/);
  answer = { ok: true };
  await userEvent.click(await screen.findByRole("button", { name: "Send now" }));
  await waitFor(() => expect(line.textContent).toBe("Handed in just now: 2 exercises of your homework. "));
});

it("says what the server will never take, keeps it, and leads to where it can be saved", async () => {
  answer = { ok: false, reason: "gone", sentence: "This homework is there no more." };
  keepWaiting(window.localStorage, work("a"));
  render(<SendIfWaiting />);
  expect(await screen.findByText(/would not take 1 exercise/)).toBeTruthy();
  expect(screen.getByRole("link", { name: "See it in Class" }).getAttribute("href")).toBe("/class");
  expect(keptWaiting(window.localStorage)).toMatchObject([{ refused: "This homework is there no more." }]);
});
