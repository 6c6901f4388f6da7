import { capital, inside } from "../plan/first-letter";
import { SKILLS, type Skill } from "./skills";

/** The skill of an id; one that a teacher named goes by its id in words. */
export function skillOf(id: string): Skill {
  const known = SKILLS.find((skill) => skill.id === id);
  if (known) return known;
  const words = id.replaceAll("-", " ");
  return {
    id,
    name: capital(words),
    many: false,
    meaning: "A skill that your teacher's exercises name.",
    unit: "sets",
  };
}

/** A skill's name in the middle of a sentence. */
export function nameInside({ name }: Pick<Skill, "name">): string {
  return inside(name);
}
