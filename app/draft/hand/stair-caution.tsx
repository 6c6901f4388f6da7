"use client";

import { INCH_M } from "@/lib/measure/length";
import { printLength } from "@/lib/measure/print-length";
import { useDesk } from "../desk/draft-context";

/** The usual limits of a public stair: risers of 4 to 7 in, treads of 11 in and more (IBC 1011.5.2, as quoted by ADA 504.2). */
const RISER_M = { least: 4 * INCH_M, most: 7 * INCH_M } as const;
const TREAD_LEAST_M = 11 * INCH_M;
/** Room for rounding, metres. */
const SLACK_M = 1e-4;

type Props = { readonly riser: number; readonly tread: number };

/** What is unusual about a flight, and the caution that goes with every one. */
export function StairCaution({ riser, tread }: Props) {
  const units = useDesk((desk) => desk.history.draft.exercise.units);
  const print = (metres: number) => printLength(metres, units);
  const odd = [
    ...(riser > RISER_M.most + SLACK_M
      ? [`A riser of ${print(riser)} is higher than the usual ${print(RISER_M.most)}.`]
      : []),
    ...(riser < RISER_M.least - SLACK_M
      ? [`A riser of ${print(riser)} is lower than the usual ${print(RISER_M.least)}.`]
      : []),
    ...(tread < TREAD_LEAST_M - SLACK_M
      ? [`A tread of ${print(tread)} is shorter than the usual ${print(TREAD_LEAST_M)}.`]
      : []),
  ];
  return (
    <p className="draft-caution">
      {odd.map((sentence) => (
        <strong key={sentence}>{sentence} </strong>
      ))}
      A teaching sketch is not a construction drawing: local codes and licensed practice decide.
    </p>
  );
}
