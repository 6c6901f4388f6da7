"use client";

import { useShelf } from "@/app/_parts/kept-work/use-shelf";

/** The student's own record of one exercise. */
export function RecordCell({ id, version }: { readonly id: string; readonly version: number }) {
  const shelf = useShelf();
  const record = shelf && Object.hasOwn(shelf.records, id) ? shelf.records[id] : undefined;
  const begun = shelf?.attempts.find((each) => each.exercise === id && each.version === version);
  const under = begun !== undefined && (begun.marks.length > 0 || begun.pending !== null);
  return (
    <span className="register-record">
      {record ? (
        <>
          best {Math.round(record.best)}, last {Math.round(record.last)}
          {record.times > 1 && ` (${record.times} times)`}
        </>
      ) : under ? (
        `begun: ${begun.marks.length} set down`
      ) : shelf ? (
        "not yet drawn"
      ) : (
        ""
      )}
    </span>
  );
}
