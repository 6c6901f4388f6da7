"use client";

import { type ChangeEvent, type DragEvent, useId, useState } from "react";
import { Press } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";
import type { GradedFolder } from "@/lib/classroom/gradebook/grade-folder";
import { Complaint } from "../field";
import { GradebookTable } from "../gradebook-table";
import { Part } from "../part";
import { useSend } from "../use-send";
import { filesChosen, filesDropped, readFiles } from "./read-files";
import "./folder.css";

type Shown = GradedFolder & { readonly csv: string };

/** Takes a folder or several files, has them graded, and shows the gradebook with what is doubtful. */
export function Folder() {
  const [shown, setShown] = useState<Shown | null>(null);
  const [over, setOver] = useState(false);
  const { sending, complaint, send, done } = useSend("/api/class/folder");
  const [many, folder] = [useId(), useId()];

  const grade = async (files: ReturnType<typeof filesDropped> | ReturnType<typeof filesChosen>) => {
    if (sending) return;
    const reply = await send({ files: await readFiles(await files) });
    done();
    if (reply) setShown(reply as unknown as Shown);
  };
  const chosen = (event: ChangeEvent<HTMLInputElement>) => {
    const files = filesChosen(event.target.files ?? []);
    // The same folder may be chosen again after a file has come.
    event.target.value = "";
    if (files.length > 0) grade(files);
  };
  const dropped = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    grade(filesDropped(event.dataTransfer));
  };
  return (
    <>
      <Part
        id="files"
        title="The files"
        note="Whose a file is comes from its name: Wim Aalders - points-on-the-floor.marks.json, or a folder named for each student."
      >
        <section
          aria-label="Drop files here"
          className="folder-drop"
          data-over={over || undefined}
          onDragOver={(event) => {
            event.preventDefault();
            setOver(true);
          }}
          onDragLeave={() => setOver(false)}
          onDrop={dropped}
        >
          <p>Drop a folder or files here, or choose them.</p>
          <div className="class-presses">
            <label className="press ruled" htmlFor={folder}>
              Choose a folder
              <input
                id={folder}
                type="file"
                className="folder-input"
                onChange={chosen}
                ref={(input) => input?.setAttribute("webkitdirectory", "")}
              />
            </label>
            <label className="press ruled" htmlFor={many}>
              Choose files
              <input id={many} type="file" multiple accept=".json" className="folder-input" onChange={chosen} />
            </label>
          </div>
        </section>
        <Complaint>{complaint}</Complaint>
        <p role="status">{sending ? "Grading them…" : shown ? sayTaken(shown) : ""}</p>
      </Part>
      {shown && shown.gradebook.rows.length > 0 && (
        <>
          <GradebookTable gradebook={shown.gradebook} />
          <div className="class-presses">
            <Press weight="main" onClick={() => saveFile("gradebook.csv", shown.csv, "text/csv;charset=utf-8")}>
              Save the table
            </Press>
          </div>
        </>
      )}
      {shown && shown.doubts.length > 0 && (
        <Part id="doubts" title="To look at" note="Files that were left out, and some that were taken with a doubt.">
          <ul>
            {shown.doubts.map(({ path, taken, sentence }) => (
              <li key={`${path} ${sentence}`} className="class-row">
                <span>{path}</span>
                <span>
                  {taken ? "Taken." : "Left out."} {sentence}
                </span>
              </li>
            ))}
          </ul>
        </Part>
      )}
    </>
  );
}

function sayTaken({ taken, gradebook: { rows } }: Shown): string {
  const files = taken === 1 ? "1 file" : `${taken} files`;
  return `${files} graded, of ${rows.length === 1 ? "1 student" : `${rows.length} students`}. Where a student has several for one exercise, the best counts.`;
}
