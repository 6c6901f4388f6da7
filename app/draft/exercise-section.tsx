"use client";

import { Press } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";
import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { writeDraft } from "@/lib/draft/write-draft";
import { TextField } from "./fields";

type Props = { readonly draft: Draft; readonly apply: (change: Edit) => string | null };

/** The plan as an exercise: its title and brief, and its file. */
export function ExerciseSection({ draft, apply }: Props) {
  const { id, title, brief } = draft.exercise;
  return (
    <section aria-labelledby="draft-exercise">
      <h2 id="draft-exercise" className="notes-title">
        Make it an exercise
      </h2>
      <div className="draft-fields">
        <TextField
          label="Title"
          value={title}
          onWrite={(text) =>
            text.trim() === ""
              ? "An exercise needs a title."
              : apply({ edit: "set-words", words: { title: text.trim() } })
          }
          wide
        />
        <TextField
          label="Brief"
          value={brief}
          onWrite={(text) => apply({ edit: "set-words", words: { brief: text.trim() } })}
          wide
        />
      </div>
      <div className="draft-presses">
        <Press weight="small" onClick={() => saveFile(`${id}.json`, `${JSON.stringify(writeDraft(draft), null, 2)}\n`)}>
          Save the file
        </Press>
      </div>
    </section>
  );
}
