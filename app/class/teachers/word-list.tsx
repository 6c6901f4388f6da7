"use client";

import { useRouter } from "next/navigation";
import { Press } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import type { WordRow } from "@/lib/classroom/accounts/teachers";
import { Complaint } from "../field";
import { useSend } from "../use-send";

/** The one-time words a teacher has made, and the ways back that were made for them. */
export function WordList({ words }: { readonly words: readonly WordRow[] }) {
  if (words.length === 0) return null;
  return (
    <ul className="class-list">
      {words.map((word) => (
        <OneWord key={word.id} word={word} />
      ))}
    </ul>
  );
}

function OneWord({ word }: { readonly word: WordRow }) {
  const router = useRouter();
  const { send, done, complaint } = useSend("/api/class/withdraw-word");
  const title = nameOf(word);
  const withdraw = async () => {
    const gone = await send({ wordId: word.id });
    done();
    if (gone) router.refresh();
  };
  return (
    <li>
      <div className="class-row">
        <span>{title}</span>
        <span>
          {word.state === "open" && (
            <>
              open until <When at={word.expiresAt} />
            </>
          )}
          {word.state === "over" && "ran out unused"}
          {word.state === "used" && word.usedAt !== null && (
            <>
              used <When at={word.usedAt} />
            </>
          )}
        </span>
        {word.state !== "used" && (
          <Press weight="small" onClick={withdraw} aria-label={`Withdraw: ${title}`}>
            {word.state === "open" ? "Withdraw" : "Take off the list"}
          </Press>
        )}
      </div>
      <Complaint>{complaint}</Complaint>
    </li>
  );
}

function nameOf({ kind, whose, madeBy, own, note }: WordRow): string {
  if (kind === "invitation") return whose ?? (note || "An invitation");
  if (own) return `For ${whose}`;
  return madeBy === null ? "For you, made at the server" : `For you, made by ${madeBy}`;
}
