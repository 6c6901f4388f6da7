import { statSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tooManyBytes } from "../../photo/files/file-trouble";
import { MOST_BYTES } from "../../photo/files/read-image-head";
import type { GreyPixels } from "../../photo/pixels";
import type { CallError } from "../outcome";
import { type Input, resolvePath } from "../read-input";
import { decodePhoto } from "./decode-photo";

/** A photograph by its file's name: its size is asked before anything of it is read. */
export async function readPhotoFile(file: string): Promise<Input<GreyPixels>> {
  const path = resolvePath(file);
  try {
    const found = statSync(path);
    if (found.isDirectory()) return failed({ file, where: "", message: "this is a folder", hint: "name a file in it" });
    if (found.size > MOST_BYTES) return failed(troubleInFile(file, tooManyBytes(MOST_BYTES)));
    const photo = await decodePhoto(new Uint8Array(await readFile(path)));
    return photo.kind === "decoded" ? { ok: true, value: photo.grey } : failed(troubleInFile(file, photo));
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    const why =
      code === "ENOENT"
        ? "there is no such file"
        : code === "EACCES"
          ? "it may not be opened"
          : `something went wrong (${code})`;
    return failed({ file, where: "", message: `the file cannot be read: ${why}`, hint: "check its name and place" });
  }
}

/** A trouble's sentences as the command line says errors: no capital at the head, no full stop. */
export function troubleInFile(
  file: string,
  { say, remedy }: { readonly say: string; readonly remedy: string },
): CallError {
  return { file, where: "", message: unpunctuated(say), hint: unpunctuated(remedy) };
}

function unpunctuated(sentence: string): string {
  return `${sentence.charAt(0).toLowerCase()}${sentence.slice(1).replace(/\.$/, "")}`;
}

function failed(error: CallError): Input<GreyPixels> {
  return { ok: false, errors: [error] };
}
