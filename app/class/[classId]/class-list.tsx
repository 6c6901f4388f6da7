"use client";

import { useRouter } from "next/navigation";
import { type ChangeEvent, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { ListedStudent } from "@/lib/classroom/homework/read-class-list";
import { Complaint } from "../field";
import { useSend } from "../use-send";

const TROUBLE: Readonly<Record<ListedStudent["trouble"], string>> = {
  none: "",
  "twice-in-list": "stands in the list twice; left out",
  "in-class": "is in the class already; left out",
  "too-long": "is too long; left out",
};

/** A class list, pasted or out of a file: looked at first, then put in. */
export function ClassList({ classId }: { readonly classId: string }) {
  const router = useRouter();
  const [text, setText] = useState("");
  const [students, setStudents] = useState<readonly ListedStudent[] | undefined>();
  const [said, setSaid] = useState("");
  const { sending, send, done, complaint } = useSend("/api/class/class-list");
  const write = (written: string) => {
    setText(written);
    setStudents(undefined);
    setSaid("");
  };
  const readFile = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    if (file) write(await file.text());
  };
  const look = async () => {
    const reply = await send({ classId, text, put: false });
    done();
    if (reply) setStudents(reply.students as readonly ListedStudent[]);
  };
  const put = async () => {
    const reply = await send({ classId, text, put: true });
    done();
    if (!reply) return;
    write("");
    setSaid(reply.put === 1 ? "1 place was made." : `${String(reply.put)} places were made.`);
    router.refresh();
  };
  const fresh = students?.filter(({ trouble }) => trouble === "none").length ?? 0;
  return (
    <details>
      <summary>Put in a class list</summary>
      <div className="class-form class-list">
        <div className="field">
          <label htmlFor="class-list">Names, one on each line</label>
          <textarea
            id="class-list"
            aria-describedby="class-list-note"
            value={text}
            onChange={(event) => write(event.target.value)}
          />
          <p className="field-note" id="class-list-note">
            A number may stand beside each, after a comma, a semicolon or a tab. A place waits for everyone, who takes
            it by joining with this very name.
          </p>
        </div>
        <div className="field">
          <label htmlFor="class-file">Or a CSV file</label>
          <input id="class-file" type="file" accept=".csv,.txt,text/csv,text/plain" onChange={readFile} />
        </div>
        <Complaint>{complaint}</Complaint>
        <p role="status">{said}</p>
        {students === undefined ? (
          <Press onClick={look} aria-disabled={sending || text.trim() === ""}>
            Look at it first
          </Press>
        ) : (
          <>
            <ul aria-label="As it was read">
              {students.map(({ line, name, number, trouble }) => (
                <li key={line} className="class-row">
                  <span>{name}</span>
                  {number !== null && <span>{number}</span>}
                  {trouble !== "none" && <span className="class-quiet">{TROUBLE[trouble]}</span>}
                </li>
              ))}
            </ul>
            {fresh > 0 ? (
              <Press weight="main" onClick={put} aria-disabled={sending}>
                {fresh === 1 ? "Make 1 place" : `Make ${fresh} places`}
              </Press>
            ) : (
              <p>Nobody in it is new.</p>
            )}
          </>
        )}
      </div>
    </details>
  );
}
