"use client";

import { useState } from "react";
import { Press, PressLink } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { useExercise } from "../desk/draft-context";
import { Fetched } from "../fetched/fetched";
import { namePart } from "../fetched/part";
import type { Library } from "../library/library";
import type { Shelved } from "./use-kept-plan";

const LIBRARY = namePart("Your library", async () => (await import("../library/library-part")).LibraryPart);
const SEND_DXF = namePart("The plan as DXF", async () => (await import("./send-dxf")).SendDxf);

/** The plans kept in this browser, folded away: open another, begin a new one, throw one away, send the one on the table. */
export function PlansFold({
  state,
  opened,
  plans,
  library,
  ...shelved
}: Shelved & { readonly library: Library | null }) {
  const exercise = useExercise();
  const [sure, setSure] = useState<string | null>(null);
  const [unfolded, unfold] = useState(false);
  return (
    <details className="look-fold draft-plans" onToggle={() => unfold(true)}>
      <summary className="plain-link text-sm">Plans</summary>
      <div className="ruled">
        <div className="draft-presses">
          <Press weight="small" onClick={() => shelved.begin("ft-in")}>
            New plan in feet
          </Press>
          <Press weight="small" onClick={() => shelved.begin("m")}>
            New plan in metres
          </Press>
          <PressLink weight="small" href="/draft/bring">
            Bring a plan
          </PressLink>
        </div>
        {unfolded && library && <Fetched key={opened} part={LIBRARY} given={{ library, plan: opened }} />}
        {state === "gone" && <p className="draft-note">This browser keeps no plans.</p>}
        <ul>
          {plans.map(({ key, title, changed }) => (
            <li key={key}>
              {key === opened ? (
                <span>
                  <strong>{title}</strong>, on the table
                </span>
              ) : (
                <>
                  <Press weight="small" onClick={() => shelved.open(key)}>
                    {title}
                  </Press>
                  <span className="draft-note">
                    <When at={changed} />
                  </span>
                  <Press
                    weight="small"
                    aria-label={`${sure === key ? "Really throw" : "Throw"} ${title} away`}
                    onClick={() => {
                      if (sure === key) shelved.throwAway(key);
                      setSure(sure === key ? null : key);
                    }}
                  >
                    {sure === key ? "Really?" : "Throw away"}
                  </Press>
                </>
              )}
            </li>
          ))}
        </ul>
        {unfolded && <Fetched part={SEND_DXF} given={{ exercise }} />}
      </div>
    </details>
  );
}
