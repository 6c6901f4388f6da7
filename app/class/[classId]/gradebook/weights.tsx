"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, Fragment, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { Work } from "@/lib/classroom/gradebook/gradebook";
import { Complaint } from "../../field";
import { useSend } from "../../use-send";

type Props = { readonly classId: string; readonly work: readonly Work[] };

/** How much each homework and each exercise counts. */
export function Weights({ classId, work }: Props) {
  const router = useRouter();
  const [written, setWritten] = useState<Readonly<Record<string, string>>>({});
  const [said, setSaid] = useState("");
  const { sending, complaint, send, done } = useSend("/api/class/weights");
  const of = (id: string, weight: number) => Number((written[id] ?? String(weight)).trim().replace(",", "."));
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const homework = work.map(({ id, weight }) => ({ id, weight: of(id, weight) }));
    const items = work.flatMap(({ columns }) =>
      columns.map(({ itemId, weight }) => ({ id: itemId, weight: of(itemId, weight) })),
    );
    setSaid("");
    if (sending) return;
    const reply = await send({ classId, homework, items });
    done();
    if (!reply) return;
    setSaid("The means are reckoned by these weights now.");
    router.refresh();
  };
  const line = (id: string, words: string, weight: number, className: string) => (
    <Fragment key={id}>
      <label htmlFor={`weight-${id}`} className={className}>
        {words}
      </label>
      <input
        id={`weight-${id}`}
        inputMode="decimal"
        autoComplete="off"
        value={written[id] ?? String(weight)}
        onChange={(event) => setWritten({ ...written, [id]: event.target.value })}
      />
    </Fragment>
  );
  return (
    <form onSubmit={submit}>
      <div className="class-weights">
        {work.map(({ id, title, weight, columns }) => (
          <Fragment key={id}>
            {line(id, title, weight, "of-work")}
            {columns.map((column) => line(column.itemId, column.title, column.weight, ""))}
          </Fragment>
        ))}
      </div>
      <Complaint>{complaint}</Complaint>
      <p role="status">{said}</p>
      <div className="class-presses">
        <Press type="submit" aria-disabled={sending}>
          Weigh it so
        </Press>
      </div>
    </form>
  );
}
