"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { Press } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { TAKE_BACK_DAYS } from "@/lib/classroom/library/library-limits";
import type { PlanRow } from "@/lib/classroom/library/read-library";
import { Complaint } from "../field";
import { Part } from "../part";
import { useSend } from "../use-send";

/** The plans that were thrown away and can still be taken back. */
export function ThrownPlans({ plans }: { readonly plans: readonly PlanRow[] }) {
  return (
    <Part
      id="thrown"
      title="Thrown away"
      note={`They are erased ${TAKE_BACK_DAYS} days after that, with their versions; until then you can take them back.`}
    >
      <ul>
        {plans.map((plan) => (
          <ThrownPlan key={plan.id} plan={plan} />
        ))}
      </ul>
    </Part>
  );
}

function ThrownPlan({ plan: { id, title, thrown_at } }: { readonly plan: PlanRow }) {
  const router = useRouter();
  const back = useSend("/api/class/throw-plan");
  const gone = useSend("/api/class/erase-plan");
  const [sure, setSure] = useState(false);
  const takeBack = async () => {
    const done = await back.send({ planId: id, thrown: false });
    back.done();
    if (done) router.refresh();
  };
  const erase = async () => {
    if (!sure) {
      setSure(true);
      return;
    }
    const done = await gone.send({ planId: id, versionId: null });
    gone.done();
    setSure(false);
    if (done) router.refresh();
  };
  return (
    <li>
      <div className="class-row">
        <span>{title}</span>
        <span>thrown away {thrown_at && <When at={thrown_at} />}</span>
        <Press weight="small" aria-label={`Take ${title} back`} onClick={takeBack}>
          Take back
        </Press>
        <Press weight="small" aria-label={`${sure ? "Really erase" : "Erase"} ${title} for good`} onClick={erase}>
          {sure ? "Really, for good?" : "Erase now"}
        </Press>
      </div>
      <Complaint>{back.complaint || gone.complaint}</Complaint>
    </li>
  );
}
