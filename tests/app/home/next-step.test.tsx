import { act, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { NextStep, type Sheet } from "@/app/_home/next-step";
import { Standing } from "@/app/_home/standing";
import { beginMove, commitMark, goOn, moveMark, newAttempt } from "@/app/_parts/kept-work/attempt";
import { keepAttempt, keepFinished, keptAttempt } from "@/app/_parts/kept-work/keep";
import { shelfChanged } from "@/app/_parts/kept-work/use-shelf";
import { aRecord, day, marksFor } from "../../progress/records";

const COURSE: readonly Sheet[] = [
  { id: "frame", title: "Reading the frame", skills: ["true-size"], version: 1, asked: 2 },
  { id: "points", title: "Points on the floor", skills: ["depth-by-eye"], version: 1, asked: 2 },
  { id: "wall", title: "A raking wall", skills: ["raking-wall", "true-size"], version: 1, asked: 2 },
];
const DAY_MS = 24 * 60 * 60 * 1000;

beforeEach(() => {
  window.localStorage.clear();
  act(shelfChanged);
});

const shelf = () => window.localStorage;
const ago = (days: number) => new Date(Date.now() - days * DAY_MS).toISOString();

/** An attempt at a course's sheet with so many marks set down. */
function attemptAt(exercise: string, marks: number) {
  let attempt = newAttempt({ id: exercise, version: 1 });
  for (let i = 0; i < marks; i++)
    attempt = goOn(commitMark(moveMark(beginMove(attempt), [i, 0], "mouse"), ["A.foot", "B.foot"]));
  return attempt;
}

describe("the first page", () => {
  it("offers a newcomer one press and nothing else", () => {
    const { container } = render(
      <>
        <NextStep catalogue={COURSE} />
        <Standing />
      </>,
    );
    expect(screen.getAllByRole("link").map((link) => link.textContent)).toEqual(["Start: Reading the frame"]);
    expect(container.querySelector("section")).toBeNull();
  });

  it("says what is mastered, what is shaky and how, and what comes back", () => {
    keepFinished(
      shelf(),
      aRecord("frame", ago(1), [...marksFor("true-size", "++++"), ...marksFor("depth-by-eye", "uud")]),
    );
    render(
      <>
        <NextStep catalogue={[...COURSE.slice(0, 2)]} />
        <Standing />
      </>,
    );
    expect(screen.getByText(/True size on the plaster line was mastered/)).toBeVisible();
    expect(
      screen.getByText("Shaky: your last three marks were off, two too far upstage and one too far downstage."),
    ).toBeVisible();
    expect(screen.getByText(/^1 skill mastered, 1 shaky/)).toBeVisible();
    expect(screen.getByRole("link", { name: "Your whole record" })).toHaveAttribute("href", "/record");
  });

  it("names the return of a mastered skill when that is why", () => {
    keepFinished(shelf(), aRecord("frame", ago(9), marksFor("true-size", "+++++")));
    render(<NextStep catalogue={COURSE} />);
    expect(screen.getByText("Next, to keep it")).toBeVisible();
    expect(
      screen.getByText(/True size on the plaster line was mastered nine days ago; one to keep it\./),
    ).toBeVisible();
    expect(screen.getByRole("link", { name: "Draw: A raking wall" })).toHaveAttribute("href", "/practise/wall");
  });

  it("takes scores from before marks were kept as drawn, and says that only they were kept", () => {
    shelf().setItem("plasterline.records", JSON.stringify({ frame: { times: 1, best: 70, last: 70, on: day(0) } }));
    render(
      <>
        <NextStep catalogue={COURSE} />
        <Standing />
      </>,
    );
    expect(screen.getByRole("link", { name: "Draw: Points on the floor" })).toBeVisible();
    expect(screen.getByText(/only the scores were kept/)).toBeVisible();
  });

  it("goes on with the sheet under way where that is the next one, and mentions another", () => {
    keepAttempt(shelf(), attemptAt("frame", 1));
    const first = render(<NextStep catalogue={COURSE} />);
    expect(screen.getByRole("link")).toHaveTextContent("Go on: Reading the frame, 1 of 2 set down");
    first.unmount();
    keepFinished(shelf(), aRecord("frame", ago(0.1), marksFor("true-size", "+++++")));
    keepAttempt(shelf(), attemptAt("wall", 1));
    shelf().removeItem("plasterline.attempt.frame");
    render(<NextStep catalogue={COURSE} />);
    expect(screen.getByText(/Or go on with/)).toHaveTextContent("Or go on with A raking wall, 1 of 2 set down.");
  });

  it("starts on a fresh sheet where a finished one lies, and leaves others alone", async () => {
    keepFinished(shelf(), aRecord("points", ago(0.1), marksFor("depth-by-eye", "ud")));
    keepFinished(shelf(), aRecord("frame", ago(0.05), marksFor("true-size", "+++")));
    keepAttempt(shelf(), attemptAt("points", 2));
    keepAttempt(shelf(), attemptAt("frame", 2));
    render(<NextStep catalogue={COURSE} />);
    const press = screen.getByRole("link", { name: "Draw: Points on the floor" });
    press.addEventListener("click", (event) => event.preventDefault());
    await userEvent.click(press);
    expect(keptAttempt(shelf() as Storage, { id: "points", version: 1 })).toBeNull();
    expect(keptAttempt(shelf() as Storage, { id: "frame", version: 1 })?.marks).toHaveLength(2);
  });

  it("says so when the course has no exercises", () => {
    render(<NextStep catalogue={[]} />);
    expect(screen.getByText("There are no exercises in this course's folder yet.")).toBeVisible();
  });
});
