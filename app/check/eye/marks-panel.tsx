"use client";

import { Press } from "@/app/_parts/press";
import { useEye, useEyeRoom } from "./eye-context";
import {
  type Addable,
  addGroup,
  changeGroup,
  type EyeWork,
  GROUP_LETTERS,
  type Length,
  LIES,
  type MarkId,
  markOfGrip,
  marksOf,
  type Runs,
} from "./eye-work";
import type { Troubles } from "./read-eye-work";
import { TypedField } from "./typed-field";

type Props = { readonly work: EyeWork; readonly troubles: Troubles };

const RUN_WORDS: Readonly<Record<Runs, string>> = {
  unknown: "how they run is not known",
  square: "square to the plaster line",
  along: "along the plaster line",
  other: "at an angle to the plaster line",
};
const LIES_WORDS: Readonly<Record<Length["lies"], string>> = {
  upright: "upright, from the floor",
  floor: "on the floor",
  "plaster line": "along the plaster line",
};

/** What can be marked, and what is. */
export function MarksPanel({ work, troubles }: Props) {
  const { store } = useEyeRoom();
  const { change } = store.getState();
  const { groups, uprights, floor, length } = work;
  return (
    <>
      {groups.map((group, g) => {
        const letter = GROUP_LETTERS[g] as (typeof GROUP_LETTERS)[number];
        return (
          <section key={letter} className="eye-part" data-kind={letter} aria-label={`Group ${letter}`}>
            <h2 className="eye-part-title">
              <Sample kind={letter} /> {letter}: these run the same way
            </h2>
            {g === 0 && group.lines.length === 0 && (
              <p className="check-quiet">
                Two or more lines that are level and parallel on the set: tops and feet of walls, edges of the floor.
              </p>
            )}
            <Chips work={work} beginning={letter} add={letter} words="Add a line" />
            {group.lines.length > 0 && (
              <label className="eye-field">
                <span className="aloud">How group {letter} runs</span>
                <select
                  className="look-list eye-list"
                  value={group.runs}
                  onChange={(event) => change((was) => changeGroup(was, g, { runs: event.target.value as Runs }))}
                >
                  {Object.entries(RUN_WORDS).map(([runs, words]) => (
                    <option key={runs} value={runs}>
                      {words}
                    </option>
                  ))}
                </select>
              </label>
            )}
            {group.lines.length > 0 && group.runs === "other" && (
              <TypedField
                words="Its angle, from stage left to upstage"
                value={group.degrees}
                unit="degrees"
                narrow
                trouble={troubles.degrees[g] ?? null}
                onChange={(degrees) => change((was) => changeGroup(was, g, { degrees }))}
              />
            )}
          </section>
        );
      })}
      {groups.length < GROUP_LETTERS.length && groups.at(-1)?.lines.length !== 0 && (
        <div className="eye-part">
          <div className="check-presses">
            <Press weight="small" onClick={() => change(addGroup)}>
              Lines that run another way
            </Press>
          </div>
        </div>
      )}
      <section className="eye-part" data-kind="U" aria-label="Uprights">
        <h2 className="eye-part-title">
          <Sample kind="U" /> U: uprights
        </h2>
        <Chips work={work} beginning="U" add="U" words="Add an upright" />
        {uprights.length === 0 && <p className="check-quiet">They show whether the drawing lies straight.</p>}
      </section>
      <section className="eye-part" data-kind="F" aria-label="A rectangle on the floor">
        <h2 className="eye-part-title">
          <Sample kind="F" /> F: a rectangle on the floor
        </h2>
        <Chips work={work} beginning="F" add={floor ? null : "F"} words="Mark its four corners" />
        {floor && (
          <TypedField
            words="Side 1–2 to side 2–3, if it is known"
            value={floor.proportion}
            example="3 to 2"
            trouble={troubles.proportion}
            onChange={(proportion) => change((was) => ({ ...was, floor: was.floor && { ...was.floor, proportion } }))}
          />
        )}
      </section>
      <section className="eye-part" data-kind="L" aria-label="One known length">
        <h2 className="eye-part-title">
          <Sample kind="L" /> L: one known length
        </h2>
        <Chips work={work} beginning="L" add={length ? null : "L"} words="Mark its two ends" />
        {length && (
          <>
            <TypedField
              words="How long it is"
              value={length.long}
              example={`12' or 3.6 m`}
              trouble={troubles.length}
              onChange={(long) => change((was) => ({ ...was, length: was.length && { ...was.length, long } }))}
            />
            <label className="eye-field">
              <span>It lies</span>
              <select
                className="look-list eye-list"
                value={length.lies}
                onChange={(event) => {
                  const lies = LIES.find((each) => each === event.target.value) ?? "upright";
                  change((was) => ({ ...was, length: was.length && { ...was.length, lies } }));
                }}
              >
                {LIES.map((lies) => (
                  <option key={lies} value={lies}>
                    {LIES_WORDS[lies]}
                  </option>
                ))}
              </select>
            </label>
          </>
        )}
      </section>
      <section className="eye-part" aria-label="The picture">
        <TypedField
          words="Width of this picture on its paper"
          value={work.widthMm}
          unit="mm"
          narrow
          trouble={troubles.widthMm}
          onChange={(widthMm) => change((was) => ({ ...was, widthMm }))}
        />
        <p className="check-quiet">
          A picture taken straight on needs nothing else. One taken aslant is straightened first, by the four corners of
          any rectangle that lies flat on the paper.
        </p>
      </section>
    </>
  );
}

type ChipsProps = {
  readonly work: EyeWork;
  readonly beginning: string;
  /** Null where there is no more to add. */
  readonly add: Addable | null;
  readonly words: string;
};

/** A press for each mark, which takes it on hand, and one that adds another. */
function Chips({ work, beginning, add, words }: ChipsProps) {
  const { store } = useEyeRoom();
  const selected = useEye((eye) => eye.selected);
  const chosen: MarkId | null = selected && markOfGrip(selected);
  return (
    <div className="check-presses eye-chips">
      {marksOf(work)
        .filter(({ id }) => id.startsWith(beginning))
        .map(({ id, spots }) => (
          <Press
            key={id}
            weight="small"
            aria-pressed={id === chosen}
            onClick={() => {
              store.getState().select(`${id}.${Math.max(spots.indexOf(null), 0)}`);
            }}
          >
            {NAMES[id] ?? id}
            {spots.includes(null) && " (not set)"}
          </Press>
        ))}
      {add && (
        <Press weight="small" onClick={() => store.getState().add(add)}>
          {words}
        </Press>
      )}
    </div>
  );
}

const NAMES: Readonly<Record<MarkId, string>> = { F: "The rectangle", L: "The length" };

/** How a kind of mark is drawn on the picture. */
function Sample({ kind }: { readonly kind: string }) {
  return (
    <svg className="eye-sample" width="34" height="10" aria-hidden="true" data-kind={kind}>
      <line x1="1" y1="5" x2="33" y2="5" className="eye-marked" />
    </svg>
  );
}
