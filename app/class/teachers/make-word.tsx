"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { Form, type Line } from "../form";

type Made = { readonly word: string; readonly link: string; readonly name: string | null };
type Props = {
  readonly path: string;
  readonly press: string;
  readonly line: Line;
  /** The page on which the word is used. */
  readonly page: "invited" | "way-back";
  /** Where others find this server; a guess where this page was opened at an address that only this computer has. */
  readonly base: string;
  readonly guessed: boolean;
};

/** Makes a one-time word and shows it, this once. */
export function MakeWord({ path, press, line, page, base, guessed }: Props) {
  const router = useRouter();
  const [made, setMade] = useState<readonly Made[]>([]);
  const take = ({ word, link, name }: Readonly<Record<string, unknown>>) => {
    setMade([{ word: String(word), link: String(link), name: typeof name === "string" ? name : null }, ...made]);
    router.refresh();
  };
  const newest = made[0];
  return (
    <>
      <Form key={made.length} path={path} press={press} lines={[line]} onDone={take} />
      <div role="status">
        {newest && (
          <div className="class-list">
            <p>
              {newest.name === null ? "The word of the invitation" : `The word for ${newest.name}`}. It is shown this
              once, and works once.
            </p>
            <p className="class-words teachers-word lettering" data-word>
              {newest.word}
            </p>
            <p>
              To be typed at <span className="class-address">{`${base}/class/${page}`}</span>, or as a link:{" "}
              <a className="plain-link class-address" href={newest.link} data-word-link>
                {`${base}${newest.link}`}
              </a>
            </p>
            {guessed && (
              <p className="class-quiet">
                Other devices reach this computer only when Plasterline was started for the room: npm start -- --lan
              </p>
            )}
          </div>
        )}
      </div>
    </>
  );
}
