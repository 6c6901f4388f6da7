import { PlainPage } from "../plain-page";
import type { Found } from "./course";

/** The page of an exercise whose file has something wrong in it: what, where, and what to do about it. */
export function BrokenSheet({ entry }: Pick<Extract<Found, { kind: "broken" }>, "entry">) {
  return (
    <PlainPage title="This sheet cannot be read">
      <p>
        The exercise is there, but its file <code>{entry.file}</code> has something wrong in it. If you are the teacher,
        mend this and look again; if not, show this page to them.
      </p>
      <ul className="flex flex-col gap-3">
        {entry.problems.map((problem) => (
          <li key={`${problem.where} ${problem.message}`}>
            <code>{problem.where === "" ? "the whole file" : problem.where}</code>: {problem.message}. To mend it:{" "}
            {problem.hint}.
          </li>
        ))}
      </ul>
    </PlainPage>
  );
}
