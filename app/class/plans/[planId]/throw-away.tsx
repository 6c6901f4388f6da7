"use client";

import { useRouter } from "next/navigation";
import { Press } from "@/app/_parts/press";
import { Complaint } from "../../field";
import { useSend } from "../../use-send";

type Props = { readonly planId: string; readonly title: string; readonly thrown: boolean };

/** Throws a plan away, or takes it back. It is not asked twice: for a while nothing is lost by it. */
export function ThrowAway({ planId, title, thrown }: Props) {
  const router = useRouter();
  const { send, done, complaint } = useSend("/api/class/throw-plan");
  const press = async () => {
    const reply = await send({ planId, thrown: !thrown });
    done();
    if (!reply) return;
    if (thrown) router.refresh();
    else router.push("/class/plans");
  };
  return (
    <>
      <Press onClick={press}>{thrown ? `Take “${title}” back` : `Throw “${title}” away`}</Press>
      <Complaint>{complaint}</Complaint>
    </>
  );
}
