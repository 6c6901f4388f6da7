"use client";

import { type ChangeEvent, useEffect, useRef, useState } from "react";
import { type PassedOn, passedOn, windowShelf } from "@/app/_parts/own-exercise/passed-on";
import { Press } from "@/app/_parts/press";
import type { Unit } from "@/lib/exercise/exercise";
import { Field } from "../../../field";
import { Select } from "../select";
import { ChoosePlans, type PlanChoice } from "./choose-plans";
import { deskItem, type Item, type KnownItem, withItem } from "./form-state";
import { TakenOut } from "./taken-out";

export type CourseUnit = {
  readonly unit: Unit;
  readonly title: string;
  readonly exercises: readonly { readonly id: string; readonly title: string; readonly level: number }[];
};

type Props = {
  readonly course: readonly CourseUnit[];
  readonly plans: readonly PlanChoice[];
  readonly items: readonly Item[];
  /** Exercises that are in the homework already, or were: what is chosen again is the very same. */
  readonly known: readonly KnownItem[];
  readonly onChange: (items: readonly Item[]) => void;
};

const LEVELS = ["1", "2", "3", "4", "5"] as const;

/** Exercises of the course, plans of the library, a variant for each student, and files of the teacher's own. */
export function ChooseExercises({ course, plans, items, known, onChange }: Props) {
  const put = (item: Omit<Item, "weight">) =>
    onChange(withItem(items, known.find(({ key }) => key === item.key) ?? { ...item, weight: "1" }));
  const takeOut = (out: string) => onChange(items.filter(({ key }) => key !== out));
  return (
    <>
      <fieldset>
        <legend>Exercises of the course</legend>
        {course.map(({ unit, title, exercises }) => {
          const chosen = exercises.filter(({ id }) => items.some(({ key }) => key === `course ${id}`)).length;
          return (
            <details key={unit}>
              <summary>
                {title}
                {chosen > 0 && `, ${chosen} chosen`}
              </summary>
              <div className="homework-choices">
                {exercises.map(({ id, title: words }) => {
                  const key = `course ${id}`;
                  const isIn = items.some((item) => item.key === key);
                  return (
                    <label key={id}>
                      <input
                        type="checkbox"
                        checked={isIn}
                        onChange={() =>
                          isIn ? takeOut(key) : put({ key, words, chosen: { source: "course", exerciseId: id } })
                        }
                      />
                      {words}
                    </label>
                  );
                })}
              </div>
            </details>
          );
        })}
      </fieldset>
      <AddVariant course={course} items={items} onPut={put} />
      <ChoosePlans plans={plans} items={items} onPut={put} onTakeOut={takeOut} />
      <AddOwn onPut={put} />
      {items.length > 0 && (
        <ol className="homework-chosen" aria-label="Chosen">
          {items.map(({ key, words, weight }) => (
            <li key={key} className="class-row">
              <span>{words}</span>
              <Field
                label="Weight"
                aria-label={`Weight of ${words}`}
                inputMode="decimal"
                value={weight}
                onWrite={(written) =>
                  onChange(items.map((item) => (item.key === key ? { ...item, weight: written } : item)))
                }
              />
              <Press weight="small" aria-label={`Take out ${words}`} onClick={() => takeOut(key)}>
                Take out
              </Press>
            </li>
          ))}
        </ol>
      )}
      <TakenOut
        known={known.filter(({ key }) => !items.some((item) => item.key === key))}
        onPutBack={(item) => onChange([...items, item])}
      />
    </>
  );
}

type Put = { readonly onPut: (item: Omit<Item, "weight">) => void };

function AddVariant({ course, items, onPut }: Put & Pick<Props, "course" | "items">) {
  const [unit, setUnit] = useState<Unit>("floor");
  const [level, setLevel] = useState<(typeof LEVELS)[number]>("1");
  const title = course.find((each) => each.unit === unit)?.title ?? unit;
  const add = () => {
    const same = items.filter(({ key }) => key.startsWith(`variant ${unit} ${level} `)).length;
    const words = `${title}, level ${level}, another for each student${same > 0 ? ` (${same + 1})` : ""}`;
    const key = `variant ${unit} ${level} ${items.length} ${same}`;
    onPut({ key, words, chosen: { source: "variant", unit, level: Number(level) } });
  };
  return (
    <fieldset>
      <legend>Another for each student</legend>
      <div className="homework-pair">
        <Select label="Unit" value={unit} choices={course.map((each) => [each.unit, each.title])} onChoose={setUnit} />
        <Select label="Level" value={level} choices={LEVELS.map((each) => [each, each])} onChoose={setLevel} />
      </div>
      <div className="class-presses">
        <Press onClick={add}>Add it</Press>
      </div>
    </fieldset>
  );
}

function AddOwn({ onPut }: Put) {
  const input = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState("");
  const [passed, setPassed] = useState<PassedOn | null>(null);
  useEffect(() => setPassed(passedOn(windowShelf())), []);
  const read = async (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.target.files ?? [])];
    setSaid("");
    for (const file of files)
      try {
        onPut({ key: `own ${file.name}`, words: file.name, chosen: { source: "own", text: await file.text() } });
      } catch {
        setSaid(`${file.name} cannot be read.`);
      }
    if (input.current) input.current.value = "";
  };
  return (
    <div className="field">
      <label htmlFor="own-file">An exercise file of your own</label>
      <input id="own-file" ref={input} type="file" accept=".json,application/json" onChange={read} />
      <p className="field-note">It is checked when you set the homework, and kept as it is now.</p>
      {passed && (
        <div className="class-presses">
          <Press onClick={() => onPut(deskItem(passed))}>Add “{passed.title}” from the drafting desk</Press>
        </div>
      )}
      <p role="status">{said}</p>
    </div>
  );
}
