import { PressLink } from "@/app/_parts/press";
import type { Problem } from "@/lib/exercise/problem";
import { Part } from "../../part";

type Props = {
  readonly planId: string;
  /** What keeps it from being drawn. */
  readonly faults: readonly Problem[];
  readonly classes: readonly { readonly id: string; readonly title: string }[];
};

/** Faults told at once; mending these usually mends the rest. */
const MOST_TOLD = 3;

/** A plan on its way to a class as homework. */
export function SetIt({ planId, faults, classes }: Props) {
  return (
    <Part id="set" title="Set it as homework" note="It is set as it is then: what you change later is set anew.">
      {faults.length > 0 && (
        <>
          <p>To be mended in Draft first:</p>
          <ul>
            {faults.slice(0, MOST_TOLD).map(({ where, message, hint }) => (
              <li key={`${where} ${message}`}>
                {message} ({hint}).
              </li>
            ))}
          </ul>
        </>
      )}
      {faults.length === 0 && classes.length === 0 && (
        <p>
          You have no class yet. <PressLink href="/class">Make one</PressLink>
        </p>
      )}
      {faults.length === 0 && classes.length > 0 && (
        <div className="class-presses">
          {classes.map(({ id, title }) => (
            <PressLink key={id} href={`/class/${id}/homework/set?plan=${planId}`}>
              {title}
            </PressLink>
          ))}
        </div>
      )}
    </Part>
  );
}
