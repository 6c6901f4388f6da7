import type { Board } from "@/lib/construction/board";
import type { Construction } from "@/lib/construction/step";
import type { PicturePoint } from "@/lib/stage/frame";

/** Two places of the sheet nearer than this are one: rounding, far below what a proof may hide. Metres. */
const SAME_M = 1e-11;

/** How near the last step must come to the projection, metres. */
const PROOF_M = 1e-9;

type P = PicturePoint;

function same([ax, ay]: P, [bx, by]: P): boolean {
  // Far from the sheet a double itself is coarser.
  return Math.hypot(ax - bx, ay - by) <= SAME_M * Math.max(1, Math.hypot(ax, ay) / 100);
}

/** Central projection by similar triangles from the format's page, written again so that nothing is taken on trust. */
export function projected({ viewer }: Pick<Board, "viewer">, [x, y, z]: readonly [number, number, number]): P {
  const s = viewer.distance / (viewer.distance + y);
  return [viewer.offset + (x - viewer.offset) * s, viewer.eyeHeight + (z - viewer.eyeHeight) * s];
}

/** Everything that is on the sheet before the first step, by the format's list. */
function onTheSheetAtTheStart({ stage, viewer, plan, placed }: Board): readonly P[] {
  const half = stage.opening.width / 2;
  const { offset, eyeHeight, distance } = viewer;
  const sides = [-half, half] as const;
  const opening = sides.flatMap((x): P[] => [
    [x, 0],
    [x, stage.opening.height],
  ]);
  const back = sides.flatMap((x) => [
    projected({ viewer }, [x, stage.depth, stage.rake * stage.depth]),
    projected({ viewer }, [x, stage.depth, stage.opening.height]),
  ]);
  const apron = stage.apron < distance ? sides.map((x) => projected({ viewer }, [x, -stage.apron, 0])) : [];
  const distancePoints = [1, 2, 3, 4].flatMap((part): P[] => [
    [offset - distance / part, eyeHeight],
    [offset + distance / part, eyeHeight],
  ]);
  const directions = plan.walls.flatMap(({ from, to }): P[] => {
    const [a, b] = [plan.corners.get(from), plan.corners.get(to)];
    if (!a || !b || a[1] === b[1]) return [];
    const across = (distance * (b[0] - a[0])) / (b[1] - a[1]);
    const reach = Math.hypot(across, distance); // the eye's own distance from the vanishing point, laid off toward the CVP
    return [across, across < 0 ? across + reach : across - reach].map((u): P => [offset + u, eyeHeight]);
  });
  const frame: readonly P[] = [
    [0, 0],
    [offset, 0],
    [offset, eyeHeight],
  ];
  return [...frame, ...opening, ...back, ...apron, ...distancePoints, ...directions, ...placed.values()];
}

/** Where two lines cross, by Cramer's rule on their normal forms. */
function crossing([[ax, ay], [bx, by]]: readonly [P, P], [[cx, cy], [dx, dy]]: readonly [P, P]): P {
  // Reckoned from the first line's own point, so that lengths far from the origin cost no digits.
  const [a1, b1] = [by - ay, ax - bx];
  const [a2, b2] = [dy - cy, cx - dx];
  const right = a2 * (cx - ax) + b2 * (cy - ay);
  const determinant = a1 * b2 - a2 * b1;
  return [ax + (-b1 * right) / determinant, ay + (a1 * right) / determinant];
}

/**
 * Plays a construction over as a strict referee: what is wrong with it, in words, one line each; none when it is a proof
 * that the point lies at `truth`.
 */
export function faultsOf(board: Board, { steps }: Construction, truth: P): readonly string[] {
  const faults: string[] = [];
  const sheet: P[] = [...onTheSheetAtTheStart(board)];
  const isOnSheet = (at: P) => sheet.some((point) => same(point, at));
  const fault = (i: number, what: string) => faults.push(`${i + 1}. (${steps[i]?.do}) ${what}`);
  for (const [i, step] of steps.entries()) {
    if (step.say.trim() === "") fault(i, "says nothing");
    if (JSON.stringify(step).includes("null")) fault(i, "has a figure that is no number"); // how JSON writes NaN
    if (step.do === "mark") {
      if (!isOnSheet(step.at)) fault(i, "names a point that is not on the sheet");
    } else if (step.do === "measure") {
      const origin = step.from === "centre line" ? ([0, 0] as const) : pointOf(steps[step.from - 1], step.from - 1 < i);
      const along: P = step.on === "upright" ? [0, step.length] : [step.length, 0];
      if (!origin) fault(i, "is measured from no earlier point");
      else {
        if (step.on !== "horizon" && Math.abs(origin[1]) > SAME_M) fault(i, "does not begin on the plaster line");
        if (step.on === "horizon" && Math.abs(origin[1] - board.viewer.eyeHeight) > SAME_M)
          fault(i, "does not begin on the horizon");
        if (!isOnSheet(origin)) fault(i, "is measured from a point that is not on the sheet");
        if (!same(step.at, [origin[0] + along[0], origin[1] + along[1]])) fault(i, "is not the length it says");
      }
      sheet.push(step.at);
    } else if (step.do === "line") {
      const [a, b] = step.through;
      if (!isOnSheet(a)) fault(i, `goes through ${a}, which is not on the sheet`);
      const goesUp = step.toward === "upright" && same(b, [a[0], a[1] + 1]);
      const goesAcross = step.toward === "level" && same(b, [a[0] + 1, a[1]]);
      if (!goesUp && !goesAcross && !isOnSheet(b)) fault(i, `goes through ${b}, which is not on the sheet`);
      if (same(a, b)) fault(i, "has no direction");
    } else {
      const [one, other] = step.lines.map((n) => {
        const line = n - 1 < i ? steps[n - 1] : undefined;
        return line?.do === "line" ? line.through : null;
      });
      if (!one || !other) fault(i, "is of lines that are not drawn");
      else {
        const at = crossing(one, other);
        if (!(Math.hypot(at[0] - step.at[0], at[1] - step.at[1]) <= PROOF_M)) fault(i, "is not where its lines cross");
      }
      sheet.push(step.at);
    }
  }
  const last = steps.at(-1);
  if (!last || last.do === "line") return [...faults, "the last step puts down no point"];
  const off = Math.hypot(last.at[0] - truth[0], last.at[1] - truth[1]);
  if (!(off <= PROOF_M)) faults.push(`ends ${off} m from the projection`);
  return faults;
}

function pointOf(step: Construction["steps"][number] | undefined, earlier: boolean): P | null {
  return step && earlier && step.do !== "line" ? step.at : null;
}
