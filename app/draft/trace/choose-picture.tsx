"use client";

import { useId, useState } from "react";
import { FileChoice, FileDrop } from "@/app/_parts/file-drop";
import { Press } from "@/app/_parts/press";
import type { PagesAsked, Trouble } from "./open-tracing";

type Props = {
  readonly trouble: Trouble | null;
  readonly pages: PagesAsked | null;
  readonly onFile: (file: Blob, page: number | null) => void;
};

/** Where the photograph is chosen or let fall, and which page of a scan. */
export function ChoosePicture({ trouble, pages, onFile }: Props) {
  const take = (file: File | undefined) => file && onFile(file, null);
  return (
    <div className="bring-choose trace-choose ruled">
      <p>
        A ground plan that is there on paper is traced from a photograph or a scan of it: it lies under what you draw,
        to scale. You will point at two places on its <strong>centre line</strong>, two on its{" "}
        <strong>plaster line</strong>, and at the ends of one <strong>length that you know</strong>.
      </p>
      <FileDrop label="A photograph of a plan" onDrop={({ files }) => take(files[0])}>
        <FileChoice
          words="Choose a photograph or a scan"
          weight="main"
          accept="image/*,.heic,.heif,application/pdf"
          onFiles={([file]) => take(file)}
        />
        <p className="draft-note">Or let it fall here: JPEG, PNG, WebP, HEIC from a telephone, or a scan as PDF.</p>
      </FileDrop>
      {pages && <WhichPage {...pages} onFile={onFile} />}
      {trouble && (
        <div className="draft-wrong" role="alert">
          <p>{trouble.say}</p>
          <p>{trouble.remedy} What is on your desk is as it was.</p>
        </div>
      )}
      <p className="draft-note">
        Taken straight from above, with all of the plan in it, it is best; one taken at a slant can be straightened. The
        picture is opened in this browser, goes to no server, and is kept here with its plan.
      </p>
    </div>
  );
}

function WhichPage({ file, count, onFile }: PagesAsked & Pick<Props, "onFile">) {
  const id = useId();
  const [page, setPage] = useState(1);
  return (
    <div className="draft-typed">
      <div className="draft-field">
        <label htmlFor={id} className="small-lettering">
          The scan has {count} pages. The plan is on page
        </label>
        <select id={id} className="look-list" value={page} onChange={(event) => setPage(Number(event.target.value))}>
          {Array.from({ length: count }, (_, i) => i + 1).map((each) => (
            <option key={each} value={each}>
              {each}
            </option>
          ))}
        </select>
      </div>
      <Press onClick={() => onFile(file, page)}>Open that page</Press>
    </div>
  );
}
