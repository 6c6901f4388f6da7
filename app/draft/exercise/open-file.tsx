"use client";

import { type ChangeEvent, useId, useState } from "react";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { keptAddress } from "@/app/_parts/own-exercise/own-address";
import { setAside } from "@/app/_parts/own-exercise/set-aside";
import { MOST_UNPACKED } from "@/lib/draft/exercise-desk/pack-text";
import { goTo } from "./go-to";

/** Opens an exercise file. It comes in as a plan of its own; the one on the table stays as it is. */
export function OpenFile() {
  const id = useId();
  const [wrong, setWrong] = useState<readonly string[]>([]);
  const open = async (event: ChangeEvent<HTMLInputElement>) => {
    const input = event.target;
    const file = input.files?.[0];
    if (!file) return;
    const found = await readPlan(file);
    input.value = "";
    setWrong(found.wrong);
    if (found.address !== null) goTo(found.address);
  };
  return (
    <span className="open-file">
      <label htmlFor={id} className="press ruled" data-weight="plain">
        Open a file
      </label>
      <input id={id} type="file" className="aloud" accept=".json,application/json" onChange={open} />
      {wrong.length > 0 && (
        <span className="draft-wrong" role="alert">
          {wrong.join(" ")}
        </span>
      )}
    </span>
  );
}

/** Problems told at once. */
const MOST_TOLD = 3;

async function readPlan(file: File): Promise<{ readonly address: string | null; readonly wrong: readonly string[] }> {
  const refuse = (...wrong: readonly string[]) => ({ address: null, wrong });
  if (file.size > MOST_UNPACKED) return refuse("That file is larger than an exercise may be, 1 MiB.");
  try {
    const [text, { readDraft }] = await Promise.all([file.text(), import("@/lib/draft/read-draft")]);
    const reading = readDraft(text);
    if (!reading.ok)
      return refuse(
        ...reading.problems
          .slice(0, MOST_TOLD)
          .map(({ where, message, hint }) => `${where || "The file"}: ${message} (${hint}).`),
      );
    const id = setAside(findShelf(), text);
    return id === null
      ? refuse("This browser keeps no plans: its storage is full or blocked.")
      : { address: keptAddress("/draft/copy", id), wrong: [] };
  } catch {
    return refuse(`${file.name} cannot be read.`);
  }
}
