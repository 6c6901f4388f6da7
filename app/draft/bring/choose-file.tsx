"use client";

import Link from "next/link";
import { FileChoice, FileDrop } from "@/app/_parts/file-drop";
import type { Problem } from "@/lib/exercise/problem";

type Props = {
  /** Why the last file could not be read; null for none. */
  readonly problem: Problem | null;
  readonly name: string;
  readonly reading: boolean;
  readonly onFile: (file: File) => void;
};

/** Where a file is chosen or let fall. */
export function ChooseFile({ problem, name, reading, onFile }: Props) {
  const first = ([file]: readonly File[]) => file && onFile(file);
  return (
    <div className="bring-choose ruled">
      <FileDrop label="The drawing's file" onDrop={({ files }) => first([...files])}>
        <p>
          A ground plan drawn with another program comes in as a <strong>DXF</strong> file (R12 to 2018, in letters or
          in bytes) or as <strong>SVG</strong>. Its lines are read here in the browser; nothing is sent anywhere.
        </p>
        <FileChoice
          words="Choose a DXF or SVG file"
          weight="main"
          accept=".dxf,.svg,image/svg+xml,image/vnd.dxf"
          onFiles={first}
        />
        <p className="draft-note">Or let it fall here. At most 20 MB.</p>
      </FileDrop>
      <p className="draft-note">
        Is the plan on paper? Lay a photograph or a scan of it under a plan and trace it: on{" "}
        <Link href="/draft" className="plain-link" prefetch={false}>
          the desk
        </Link>
        , under Draw.
      </p>
      <p role="status">{reading ? `Reading ${name}.` : ""}</p>
      {problem && (
        <div className="draft-wrong" role="alert">
          <p>
            {name} cannot be read. In {problem.where}: {problem.message}.
          </p>
          <p>To mend it: {problem.hint}. What is on your desk is as it was.</p>
        </div>
      )}
    </div>
  );
}
