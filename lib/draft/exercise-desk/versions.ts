/** A plan as it was at a moment: the text of its file, and what its author called it, or nothing. */
export type Version = { readonly when: string; readonly name: string; readonly text: string };

/** The most versions of one plan; one more, and the oldest goes. */
export const MOST_VERSIONS = 20;

/** The longest name of a version, letters. */
const MOST_LETTERS = 80;

/** The versions with one more, the newest first. What is the very same as the newest is not kept twice; a name is. */
export function addVersion(versions: readonly Version[], version: Version): readonly Version[] {
  const named = { ...version, name: version.name.trim().slice(0, MOST_LETTERS) };
  const [newest] = versions;
  if (newest?.text === named.text && (named.name === "" || named.name === newest.name)) return versions;
  return [named, ...versions].slice(0, MOST_VERSIONS);
}

export function dropVersion(versions: readonly Version[], when: string): readonly Version[] {
  return versions.filter((version) => version.when !== when);
}

/** Versions from what a browser kept; whatever is none is left out. */
export function readVersions(kept: unknown): readonly Version[] {
  return Array.isArray(kept) ? kept.filter(isVersion).slice(0, MOST_VERSIONS) : [];
}

function isVersion(value: unknown): value is Version {
  const { when, name, text } = (value ?? {}) as Partial<Record<keyof Version, unknown>>;
  return (
    typeof when === "string" && !Number.isNaN(Date.parse(when)) && typeof name === "string" && typeof text === "string"
  );
}
