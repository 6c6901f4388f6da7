"use client";

import { type FormEvent, useId, useRef, useState } from "react";
import { Press } from "@/app/_parts/press";
import { type TypedPoint, typedPoint } from "@/lib/draft/snapping/typed-point";
import { useDesk, useDeskStore } from "../desk/draft-context";
import { type Hand, lastPlace } from "./hand";

const EMPTY = { along: "", angle: "", across: "", upstage: "" } as const;
type Typed = { readonly [Field in keyof typeof EMPTY]: string };

/** The next corner typed: how long and at what angle from the last one, or how far across and upstage. */
export function TypedCorner({ hand }: { readonly hand: Hand }) {
  const store = useDeskStore();
  const { plan, units } = useDesk((desk) => desk.history.draft.exercise);
  const from = lastPlace(hand, plan);
  const [typed, setTyped] = useState<Typed>(EMPTY);
  const [wrong, setWrong] = useState<{ readonly field: keyof Typed; readonly say: string } | null>(null);
  const id = useId();
  const form = useRef<HTMLFormElement>(null);

  const setDown = (event: FormEvent) => {
    event.preventDefault();
    const { aim, setAim, setDown } = store.getState();
    const place = typed.across !== "" || typed.upstage !== "" || !from;
    const point: TypedPoint = place ? { way: "place", ...typed } : { way: "along", ...typed };
    const aimed = from && aim?.kind === "place" ? Math.atan2(aim.at[1] - from[1], aim.at[0] - from[0]) : null;
    const read = typedPoint(point, units, from && { at: from, heading: aimed });
    if (!read.ok) {
      setWrong(read);
      return;
    }
    setWrong(null);
    setTyped(EMPTY);
    setAim({ kind: "place", at: read.at, to: [], guides: [] });
    setDown();
    setAim(null);
    form.current?.querySelector("input")?.focus();
  };
  const line = (field: keyof Typed, label: string) => (
    <div className="draft-field">
      <label htmlFor={`${id}-${field}`} className="small-lettering">
        {label}
      </label>
      <input
        id={`${id}-${field}`}
        className="look-list"
        type="text"
        autoComplete="off"
        value={typed[field]}
        aria-invalid={wrong?.field === field}
        aria-describedby={wrong?.field === field ? `${id}-wrong` : undefined}
        onChange={(event) => setTyped({ ...typed, [field]: event.target.value })}
      />
    </div>
  );
  return (
    <form ref={form} className="draft-typed" onSubmit={setDown} aria-label="Type the next corner">
      {from && (
        <>
          {line("along", "Along")}
          {line("angle", "Angle")}
          <p className="draft-or">or</p>
        </>
      )}
      {line("across", "Across")}
      {line("upstage", "Upstage")}
      <Press type="submit" weight="small">
        Set as typed
      </Press>
      {wrong && (
        <p id={`${id}-wrong`} className="draft-wrong" role="alert">
          {wrong.say}
        </p>
      )}
      {from && (
        <p className="draft-note">
          Angle in degrees: 0 toward stage left, 90 upstage. Across: stage right with a minus.
        </p>
      )}
    </form>
  );
}
