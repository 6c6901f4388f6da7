"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { Press } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import type { VersionRow } from "@/lib/classroom/library/read-library";
import { Complaint } from "../../field";
import { useSend } from "../../use-send";

type Props = { readonly planId: string; readonly edition: number; readonly versions: readonly VersionRow[] };

/** What the plan was before, the newest first, to go back to. */
export function PlanVersions({ planId, edition, versions }: Props) {
  const [said, setSaid] = useState("");
  return (
    <>
      {versions.length === 0 && <p>There is none yet.</p>}
      <ul>
        {versions.map((version) => (
          <OneVersion key={version.id} planId={planId} edition={edition} version={version} onSay={setSaid} />
        ))}
      </ul>
      <p role="status">{said}</p>
    </>
  );
}

type OneProps = Omit<Props, "versions"> & {
  readonly version: VersionRow;
  readonly onSay: (words: string) => void;
};

function OneVersion({ planId, edition, version: { id, at, words, beside }, onSay }: OneProps) {
  const router = useRouter();
  const back = useSend("/api/class/go-back-plan");
  const gone = useSend("/api/class/erase-plan");
  const [sure, setSure] = useState(false);
  const goBack = async () => {
    const done = await back.send({ planId, versionId: id, base: edition });
    back.done();
    if (!done) return;
    onSay("That version is the plan again. What the plan was until now is among the versions.");
    router.refresh();
  };
  const erase = async () => {
    if (!sure) {
      setSure(true);
      return;
    }
    const done = await gone.send({ planId, versionId: id });
    gone.done();
    setSure(false);
    if (!done) return;
    onSay("That version is erased.");
    router.refresh();
  };
  return (
    <li>
      <div className="class-row">
        <span>
          {words !== "" && `${words}, `}
          <When at={at} />
          {beside === 1 && ", kept from another browser beside the plan"}
        </span>
        <Press weight="small" onClick={goBack}>
          Go back to it
        </Press>
        <a
          className="press ruled"
          data-weight="small"
          href={`/api/class/plan?planId=${planId}&versionId=${id}`}
          download="plan.json"
        >
          Save the file
        </a>
        <Press weight="small" onClick={erase}>
          {sure ? "Really, for good?" : "Erase"}
        </Press>
      </div>
      <Complaint>{back.complaint || gone.complaint}</Complaint>
    </li>
  );
}
