"use client";

import { useState } from "react";
import { FileChoice, FileDrop } from "@/app/_parts/file-drop";
import { Press } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";
import type { GradedFolder } from "@/lib/classroom/gradebook/grade-folder";
import { Complaint } from "../field";
import { GradebookTable } from "../gradebook-table";
import { Part } from "../part";
import { useSend } from "../use-send";
import { filesChosen, filesDropped, readFiles } from "./read-files";

type Shown = GradedFolder & { readonly csv: string };

/** Takes a folder or several files, has them graded, and shows the gradebook with what is doubtful. */
export function Folder() {
  const [shown, setShown] = useState<Shown | null>(null);
  const { sending, complaint, send, done } = useSend("/api/class/folder");

  const grade = async (files: ReturnType<typeof filesDropped> | ReturnType<typeof filesChosen>) => {
    if (sending) return;
    const reply = await send({ files: await readFiles(await files) });
    done();
    if (reply) setShown(reply as unknown as Shown);
  };
  return (
    <>
      <Part
        id="files"
        title="The files"
        note="Whose a file is comes from its name: Wim Aalders - points-on-the-floor.marks.json, or a folder named for each student."
      >
        <FileDrop label="Drop files here" onDrop={(dropped) => grade(filesDropped(dropped))}>
          <p>Drop a folder or files here, or choose them.</p>
          <div className="class-presses">
            <FileChoice
              words="Choose a folder"
              onFiles={(files) => grade(filesChosen(files))}
              inputRef={(input) => input?.setAttribute("webkitdirectory", "")}
            />
            <FileChoice words="Choose files" many accept=".json" onFiles={(files) => grade(filesChosen(files))} />
          </div>
        </FileDrop>
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
