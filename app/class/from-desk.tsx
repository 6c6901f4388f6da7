"use client";

import { useEffect, useState } from "react";
import { type PassedOn, passedOn, windowShelf } from "@/app/_parts/own-exercise/passed-on";
import { PressLink } from "@/app/_parts/press";
import { Part } from "./part";

type Props = { readonly classes: readonly { readonly id: string; readonly title: string }[] };

/** What the drafting desk passed on to be set: to which class. Nothing where nothing was. */
export function FromDesk({ classes }: Props) {
  const [passed, setPassed] = useState<PassedOn | null>(null);
  useEffect(() => setPassed(passedOn(windowShelf())), []);
  if (!passed) return null;
  return (
    <Part id="from-desk" title="From the drafting desk" note="It stays at hand as long as this window is open.">
      <p>
        {classes.length === 0
          ? `“${passed.title}” is to be set as homework. Make a class below first.`
          : `“${passed.title}” is to be set as homework. To which class?`}
      </p>
      <div className="class-presses">
        {classes.map(({ id, title }) => (
          <PressLink key={id} href={`/class/${id}/homework/set?from=desk`}>
            {title}
          </PressLink>
        ))}
      </div>
    </Part>
  );
}
