"use client";

import { printLength } from "@/lib/measure/print-length";
import { wallLine } from "@/lib/plan/wall-line";
import type { Desk } from "../desk/desk";
import { useDesk, useDeskStore, useRestingDesk } from "../desk/draft-context";
import { ChoiceField, LengthField } from "../fields/fields";

const aimOf = ({ aim }: Desk) => aim;

/** Where the opening in hand stands: in which wall, and how far from either end. */
export function OpeningPlace() {
  const store = useDeskStore();
  const { plan, units } = useDesk((desk) => desk.history.draft.exercise);
  const aim = useRestingDesk(aimOf);
  const width = useDesk((desk) => desk.measures.opening.width);
  const at = aim?.kind === "on-wall" ? aim : null;
  const wall = at ? plan.walls.find(({ id }) => id === at.wall) : undefined;
  const length = wall ? (wallLine(plan, wall)?.length ?? 0) : 0;
  const room = length - width;
  const put = (id: string, place: number) => store.getState().setAim({ kind: "on-wall", wall: id, at: place });
  const place = (metres: number) => {
    if (!wall) return null;
    if (metres < 0 || metres > room)
      return `It must stand within the wall: 0 to ${printLength(Math.max(room, 0), units)}.`;
    put(wall.id, metres);
    return null;
  };
  const order = ["", ...plan.walls.map(({ id }) => id)];
  const words = Object.fromEntries([
    ["", "Choose a wall"],
    ...plan.walls.map(({ id, from, to }) => [id, `${id}, ${from} to ${to}`]),
  ]);
  const choose = (id: string) => {
    const chosen = plan.walls.find((each) => each.id === id);
    const line = chosen && wallLine(plan, chosen);
    store.getState().setAim(line ? { kind: "on-wall", wall: id, at: Math.max(0, (line.length - width) / 2) } : null);
  };
  return (
    <div className="draft-fields">
      <ChoiceField label="Wall" words={words} order={order} value={wall?.id ?? ""} onChoice={choose} />
      {wall && at && (
        <>
          <LengthField label={`From ${wall.from}`} metres={at.at} onLength={place} />
          <LengthField label={`From ${wall.to}`} metres={room - at.at} onLength={(metres) => place(room - metres)} />
        </>
      )}
    </div>
  );
}
