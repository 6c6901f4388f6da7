"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { Press } from "@/app/_parts/press";
import { Complaint } from "../field";
import { Keep } from "../keep-passphrase";
import { useSend } from "../use-send";
import { Twice } from "./twice";

type Props = { readonly memberId: string; readonly name: string; readonly joined: boolean };

/** One student: a new passphrase, all that is kept of them, and its end. */
export function MemberRow({ memberId, name, joined }: Props) {
  const router = useRouter();
  const renewal = useSend("/api/class/renew-passphrase");
  const erasing = useSend("/api/class/erase-member");
  const [kept, setKept] = useState<{ readonly passphrase: string; readonly link: string } | undefined>();
  const renew = async () => {
    const reply = await renewal.send({ memberId });
    renewal.done();
    if (reply) setKept({ passphrase: String(reply.passphrase), link: String(reply.link) });
  };
  const erase = async () => {
    if (await erasing.send({ memberId })) router.refresh();
  };
  return (
    <li>
      <div className="class-row">
        <span>{name}</span>
        {joined ? (
          <Press weight="small" onClick={renew} aria-label={`New passphrase for ${name}`}>
            New passphrase
          </Press>
        ) : (
          <span className="class-quiet">has not joined</span>
        )}
        <a
          className="press ruled"
          data-weight="small"
          href={`/api/class/export?memberId=${memberId}`}
          aria-label={`Save what is kept of ${name}`}
          download
        >
          Save
        </a>
        <Twice words="Erase" whose={name} sure="Erase all their work?" onSure={erase} />
      </div>
      <Complaint>{renewal.complaint || erasing.complaint}</Complaint>
      {kept && <Keep {...kept} whose="the student's" />}
    </li>
  );
}
