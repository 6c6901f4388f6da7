import { act, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createDesk } from "@/app/draft/desk/desk-store";
import { DeskContext } from "@/app/draft/desk/draft-context";
import { fileText } from "@/app/draft/kept/file-text";
import { keptLink, linkedPlans } from "@/app/draft/library/kept-links";
import type { Library } from "@/app/draft/library/library";
import { LibraryPart } from "@/app/draft/library/library-part";

type Asked = { readonly path: string; readonly body: Readonly<Record<string, unknown>> | null };

/** A server that answers as it is told, in turn; `lost` takes what is sent and its answer goes astray. */
function answerWith(...answers: readonly (object | string | "lost")[]): Asked[] {
  const asked: Asked[] = [];
  const fetch = vi.fn(async (path: string, init?: { readonly body: string }) => {
    asked.push({ path, body: init ? JSON.parse(init.body) : null });
    const answer = answers[asked.length - 1];
    if (answer === undefined || answer === "lost") throw new TypeError("Failed to fetch");
    return typeof answer === "string" ? new Response(answer) : Response.json(answer);
  });
  vi.stubGlobal("fetch", fetch);
  return asked;
}

const AT = "2026-11-10T10:00:00.000Z";
const kept = (edition: number, where: "plan" | "beside" = "plan") => ({
  ok: true,
  kept: where,
  edition,
  changedAt: AT,
});
const OPEN: Library = { kind: "open", ownerId: "ida", plans: [] };

function show(library: Library = OPEN, plan = "1") {
  const desk = createDesk("ft-in");
  render(
    <DeskContext value={desk}>
      <LibraryPart library={library} plan={plan} />
    </DeskContext>,
  );
  const change = (distance: number) =>
    act(() => {
      desk.getState().apply({ edit: "add-point", at: [distance, 2] });
    });
  return { desk, change };
}

const press = (name: string) => userEvent.click(screen.getByRole("button", { name }));

beforeEach(() => window.localStorage.clear());
afterEach(() => vi.unstubAllGlobals());

describe("the plan on the table and its teacher's library", () => {
  it("is kept, is changed since, and is kept again on the edition that came back", async () => {
    const asked = answerWith(kept(1), kept(2));
    const { change } = show();
    expect(screen.getByText("This plan is in this browser only.")).toBeInTheDocument();
    await userEvent.type(screen.getByLabelText("What is new in it, if you like"), "The stage");
    await press("Keep it in your library");
    expect(await screen.findByText(/It is in your library as it is here/)).toBeInTheDocument();
    expect(screen.queryByRole("button", { name: /Keep/ })).toBeNull();
    change(1);
    expect(screen.getByText(/Changed here since it was kept in your library/)).toBeInTheDocument();
    await press("Keep the changes in your library");
    await screen.findByText(/It is in your library as it is here/);
    expect(asked.map(({ body }) => [body?.base, body?.words])).toEqual([
      [0, "The stage"],
      [1, ""],
    ]);
    expect(asked[0]?.body?.planId).toBe(asked[1]?.body?.planId);
  });

  it("is one plan there though the first answer went astray, and its own change is no other browser's", async () => {
    const desk = show();
    const first = fileText(desk.desk.getState().history.draft);
    const asked = answerWith("lost", kept(1, "beside"), first, kept(2));
    await press("Keep it in your library");
    expect(await screen.findByText(/The class server could not be reached\./)).toBeInTheDocument();
    expect(screen.getByText("This plan is in this browser only.")).toBeInTheDocument();
    desk.change(1);
    await press("Keep it in your library");
    expect(await screen.findByText(/It is in your library as it is here/)).toBeInTheDocument();
    expect(new Set(asked.filter(({ body }) => body).map(({ body }) => body?.planId)).size).toBe(1);
    expect(asked.at(-1)?.body?.base).toBe(1);
  });

  it("tells of another browser's change, and puts its own in that one's place only when it is asked to", async () => {
    const asked = answerWith(kept(1), kept(4, "beside"), kept(5));
    const { change } = show();
    await press("Keep it in your library");
    await screen.findByText(/It is in your library/);
    change(1);
    await press("Keep the changes in your library");
    expect(await screen.findByText(/Another browser kept a change of this plan first/)).toHaveTextContent(
      "nothing is lost",
    );
    expect(screen.getByRole("button", { name: "Open the one in the library" })).toBeInTheDocument();
    await press("Put mine in its place");
    expect(await screen.findByText(/It is in your library as it is here/)).toBeInTheDocument();
    expect(asked.map(({ body }) => body?.base)).toEqual([0, 1, 4]);
  });

  it("says what the server has against it, and how to go on", async () => {
    answerWith(
      { ok: false, reason: "forbidden", sentence: "Not yours." },
      { ok: false, reason: "no-room", sentence: "Your library is full." },
      kept(1),
      { ok: false, reason: "gone", sentence: "This plan is in your library no more." },
    );
    const { change } = show();
    await press("Keep it in your library");
    expect(await screen.findByText(/You are signed in as a teacher no more/)).toBeInTheDocument();
    expect(screen.getByRole("link", { name: "Sign in" })).toHaveAttribute("href", "/class");
    await press("Keep it in your library");
    expect(await screen.findByText(/Your library is full\. Here it is kept all the same/)).toBeInTheDocument();
    await press("Keep it in your library");
    await screen.findByText(/It is in your library/);
    change(1);
    await press("Keep the changes in your library");
    await press("Make it a new one");
    expect(screen.getByText("This plan is in this browser only.")).toBeInTheDocument();
  });

  it("is no plan of another teacher at the same browser", async () => {
    answerWith(kept(1));
    show();
    await press("Keep it in your library");
    await screen.findByText(/It is in your library/);
    expect(keptLink(window.localStorage, "1", "bo")).toBeNull();
    const planId = keptLink(window.localStorage, "1", "ida")?.planId ?? "";
    expect(linkedPlans(window.localStorage, planId, "bo")).toEqual([]);
    expect(linkedPlans(window.localStorage, planId, "ida").map(({ key }) => key)).toEqual(["1"]);
  });

  it("hears of a newer edition and of one thrown away as the page opens", async () => {
    answerWith(kept(1));
    show();
    await press("Keep it in your library");
    await screen.findByText(/It is in your library/);
    const planId = keptLink(window.localStorage, "1", "ida")?.planId ?? "";
    const row = { planId, changedAt: AT, thrown: false };
    show({ ...OPEN, plans: [{ ...row, edition: 2 }] });
    await waitFor(() => expect(screen.getByText(/Your library has a newer one/)).toBeInTheDocument());
    show({ ...OPEN, plans: [{ ...row, edition: 1, thrown: true }] });
    await waitFor(() => expect(screen.getByText(/You threw this plan away in your library/)).toBeInTheDocument());
  });

  it("says why a library is closed, and that the plan is kept here", () => {
    show({ kind: "closed", sentence: "The disk is full." });
    expect(screen.getByText(/The disk is full\. Your plan is kept in this browser all the same\./)).toBeInTheDocument();
  });
});
