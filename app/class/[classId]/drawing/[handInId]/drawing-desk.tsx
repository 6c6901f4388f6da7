"use client";

import { useRouter } from "next/navigation";
import { useId, useMemo, useState } from "react";
import { Press } from "@/app/_parts/press";
import { Finished } from "@/app/_sheet/finished";
import { shownRatio } from "@/app/_sheet/result-drawing";
import { ResultTable } from "@/app/_sheet/result-table";
import { setRoom } from "@/app/_sheet/set-room";
import type { RedLine, Remark } from "@/lib/classroom/gradebook/remarks";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Grade } from "@/lib/grading/grade";
import { sayPoint } from "@/lib/plan/say-point";
import { Complaint } from "../../../field";
import { Part } from "../../../part";
import { useSend } from "../../../use-send";
import { CloseDrawing } from "./close-drawing";
import { RedLines, ringAbout, useRedPencil } from "./red-pencil";
import "../../../gradebook.css";

type Props = {
  readonly handInId: string;
  readonly exercise: Exercise;
  readonly grade: Grade;
  /** What the habits in the grade are called. */
  readonly habitNames: Readonly<Record<string, string>>;
  readonly remark: Pick<Remark, "strokes" | "words">;
  /** Whether the reader may write on it. */
  readonly teaches: boolean;
};

/** The drawing over the truth with the red pencil's lines, every mark in a table, and the teacher's words. */
export function DrawingDesk({ handInId, exercise, grade, habitNames, remark, teaches }: Props) {
  const router = useRouter();
  const paper = useMemo(() => setRoom(exercise), [exercise]);
  const [lines, setLines] = useState<readonly RedLine[]>(remark.strokes);
  const [words, setWords] = useState(remark.words);
  const [point, setPoint] = useState("");
  const [said, setSaid] = useState("");
  const { sending, complaint, send, done } = useSend("/api/class/remark");
  const [area, pick] = [useId(), useId()];
  const change = (next: readonly RedLine[]) => {
    setLines(next);
    setSaid("");
  };
  const scaleRatio = shownRatio(paper);
  const pencil = useRedPencil(scaleRatio, (line) => change([...lines, line]));
  const keep = async () => {
    if (sending) return;
    const reply = await send({ handInId, strokes: lines, words });
    done();
    if (!reply) return;
    setSaid("Kept. The student sees it with the result.");
    router.refresh();
  };
  const ring = () => {
    const mark = grade.marks.find((each) => each.point === point);
    if (mark) change([...lines, ringAbout(mark.at, scaleRatio)]);
  };
  const nameOf = (name: string) => {
    const known = paper.points.get(name);
    return known ? sayPoint(known) : name;
  };
  return (
    <>
      <CloseDrawing
        paper={paper}
        grade={grade}
        label={`${teaches ? "The student’s" : "Your"} drawing, with the true places in red. The table tells each error.`}
        about={grade.marks.find((each) => each.point === point)?.at ?? null}
        pencil={teaches ? pencil : null}
      >
        <RedLines lines={pencil.drawing ? [...lines, pencil.drawing] : lines} scaleRatio={scaleRatio} />
      </CloseDrawing>
      <p className="class-quiet work-legend">
        Graphite: {teaches ? "the student’s" : "yours"}. Red and dashed: true. Red by hand:{" "}
        {teaches ? "yours" : "your teacher’s"}.
      </p>
      {teaches && (
        <Part
          id="pencil"
          title="Red pencil"
          note="Draw on the sheet with a mouse, a pen or a finger, or ring a mark by name. The mark chosen here is the one that Closer goes to."
        >
          <div className="work-pencil">
            <div className="class-pick">
              <label htmlFor={pick}>Mark</label>
              <select id={pick} value={point} onChange={(event) => setPoint(event.target.value)}>
                <option value="">Choose one</option>
                {grade.marks.map((mark) => (
                  <option key={mark.point} value={mark.point}>
                    {nameOf(mark.point)}
                  </option>
                ))}
              </select>
            </div>
            <Press onClick={ring} aria-disabled={point === ""}>
              Ring it
            </Press>
            <Press onClick={() => change(lines.slice(0, -1))} aria-disabled={lines.length === 0}>
              Take back the last line
            </Press>
            <Press onClick={() => change([])} aria-disabled={lines.length === 0}>
              Take all back
            </Press>
          </div>
          <div className="field">
            <label htmlFor={area}>Words</label>
            <textarea
              id={area}
              className="class-words-area"
              rows={4}
              maxLength={4000}
              value={words}
              onChange={(event) => {
                setWords(event.target.value);
                setSaid("");
              }}
            />
          </div>
          <Complaint>{complaint}</Complaint>
          <p role="status">{said}</p>
          <div className="class-presses">
            <Press weight="main" onClick={keep} aria-disabled={sending}>
              Keep lines and words
            </Press>
          </div>
        </Part>
      )}
      {!teaches && remark.words !== "" && (
        <Part id="remark" title="Your teacher writes">
          <p className="work-words">{remark.words}</p>
        </Part>
      )}
      <ResultTable paper={paper} grade={grade} habitNames={habitNames} />
      <Finished paper={paper} grade={grade} whose={teaches ? "student" : "own"} />
    </>
  );
}
