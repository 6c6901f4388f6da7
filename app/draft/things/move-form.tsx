"use client";

import { type FormEvent, useId, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { typedLength } from "@/lib/draft/snapping/typed-point";
import { useDeskStore, useExercise } from "../desk/draft-context";
import { middleOf } from "./middle-of";

/** Moves, copies, mirrors, turns and takes away what is chosen. */
export function MoveForm({ chosen }: { readonly chosen: readonly Thing[] }) {
  const { plan, units } = useExercise();
  const store = useDeskStore();
  const id = useId();
  const [across, setAcross] = useState("");
  const [upstage, setUpstage] = useState("");
  const [turn, setTurn] = useState("");
  const [wrong, setWrong] = useState("");
  const sliding = chosen.every(({ kind }) => kind === "opening");

  const make = (change: Edit, follow = false) => {
    const { apply, choose } = store.getState();
    const edited = apply(change);
    setWrong(edited.ok ? "" : edited.say);
    if (!edited.ok || !follow) return;
    // Corners of copied walls come along with them.
    const things = edited.made.filter(({ kind }) => kind !== "corner");
    choose(things.length > 0 ? things : edited.made);
  };
  const by = (text: string) => (text.trim() === "" ? ({ ok: true, metres: 0 } as const) : typedLength(text, units));
  const shift = (copy: boolean) => {
    const [x, y] = [by(across), by(upstage)];
    if (!x.ok || !y.ok) {
      setWrong(x.ok ? (y.ok ? "" : y.say) : x.say);
      return;
    }
    if (x.metres === 0 && y.metres === 0) setWrong("Write how far across, upstage, or both.");
    else make({ edit: copy ? "copy" : "move", things: chosen, by: [x.metres, y.metres] }, copy);
  };
  const turnBy = () => {
    const degrees = Number(turn.replace("°", "").trim());
    const about = middleOf(chosen, plan);
    if (turn.trim() === "" || !Number.isFinite(degrees)) setWrong("Write degrees, like 90 or -45.");
    else if (about) make({ edit: "turn", things: chosen, about, angle: (degrees * Math.PI) / 180 });
  };
  const line = (name: string, label: string, value: string, set: (text: string) => void) => (
    <div className="draft-field">
      <label htmlFor={`${id}-${name}`} className="small-lettering">
        {label}
      </label>
      <input
        id={`${id}-${name}`}
        className="look-list"
        type="text"
        autoComplete="off"
        value={value}
        onChange={(event) => set(event.target.value)}
      />
    </div>
  );
  return (
    <form
      className="draft-typed"
      aria-label="Move and copy"
      onSubmit={(event: FormEvent) => {
        event.preventDefault();
        shift(false);
      }}
    >
      {line("across", "Across by", across, setAcross)}
      {line("upstage", "Upstage by", upstage, setUpstage)}
      <div className="draft-presses">
        <Press type="submit" weight="small">
          Move it
        </Press>
        <Press weight="small" onClick={() => shift(true)}>
          Copy it there
        </Press>
      </div>
      {!sliding && line("turn", "Turn by, degrees", turn, setTurn)}
      {!sliding && (
        <div className="draft-presses">
          <Press weight="small" onClick={turnBy}>
            Turn it
          </Press>
        </div>
      )}
      <div className="draft-presses">
        <Press weight="small" onClick={() => make({ edit: "mirror", things: chosen, x: 0, copy: false })}>
          Mirror across the centre line
        </Press>
        <Press weight="small" onClick={() => make({ edit: "mirror", things: chosen, x: 0, copy: true }, true)}>
          Copy mirrored
        </Press>
        <Press weight="small" onClick={() => make({ edit: "take-away", things: chosen })}>
          Take away
        </Press>
      </div>
      {wrong && (
        <p className="draft-wrong" role="alert">
          {wrong}
        </p>
      )}
    </form>
  );
}
