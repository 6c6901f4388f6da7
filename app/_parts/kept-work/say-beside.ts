import { capital } from "@/lib/plan/first-letter";

/** A skill's words where its name already stands beside them: "Depth by eye is shaky: ..." is "Shaky: ...". */
export function sayBeside(words: string, name: string): string {
  if (!words.startsWith(`${name} `)) return words;
  const rest = words.slice(name.length + 1).replace(/^(is|are|has|have) /, "");
  return capital(rest);
}
