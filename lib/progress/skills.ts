import type { Unit } from "../exercise/exercise";
import type { TraceParameters } from "./trace-skill";

/** What the exercises train. */
export type Skill = {
  /** As the exercises list it. */
  readonly id: string;
  /** For a heading; also for the middle of a sentence once its first letter is made small (see `nameInside`). */
  readonly name: string;
  /** One sentence for the student. */
  readonly meaning: string;
  /** The unit of the course that begins it. */
  readonly unit: Unit;
  /** Where the tracing of this skill differs from the usual. */
  readonly trace?: Partial<TraceParameters>;
};

/** In the order the course begins them. */
export const SKILLS: readonly Skill[] = [
  {
    id: "true-size",
    name: "True size on the plaster line",
    meaning: "What stands on the plaster line is drawn at its true size, read off the rule.",
    unit: "floor",
  },
  {
    id: "ray-to-cvp",
    name: "Rays to the CVP",
    meaning: "A line square to the plaster line runs to the centre vanishing point, and offsets draw in along it.",
    unit: "floor",
  },
  {
    id: "depth-by-eye",
    name: "Depth by eye",
    meaning: "Judging how far up the floor of the picture a depth of the plan falls.",
    unit: "floor",
  },
  {
    id: "diagonals",
    name: "Halves by diagonals",
    meaning: "Halves and quarters of a depth lie where the diagonals of the floor cross.",
    unit: "floor",
  },
  {
    id: "raking-wall",
    name: "Raking walls",
    meaning: "A raking wall's foot and top run to a vanishing point of the wall's own on the horizon.",
    unit: "walls",
  },
  {
    id: "height",
    name: "Heights",
    meaning: "A height is true on the plaster line and draws in with depth, towards the horizon.",
    unit: "walls",
  },
  {
    id: "opening",
    name: "Openings in a wall",
    meaning: "A wall that runs away is not divided as the plan divides it: its far parts draw in.",
    unit: "openings",
  },
  {
    id: "furniture",
    name: "Furniture",
    meaning: "A piece of furniture is drawn as the box it fits into, standing on the floor.",
    unit: "furniture",
  },
  {
    id: "platform",
    name: "Platforms",
    meaning: "A platform's top is a floor of its own, nearer to the horizon than the stage floor.",
    unit: "levels",
  },
  {
    id: "stairs",
    name: "Stairs",
    meaning: "Nosings rise by equal risers, and their treads draw in with depth.",
    unit: "levels",
  },
  {
    id: "apron",
    name: "Before the plaster line",
    meaning: "On the apron things are larger than true size, and are found by running the ray forward.",
    unit: "stage",
  },
  {
    id: "off-centre-eye",
    name: "An eye off the centre line",
    meaning: "The vanishing point stands before the eye, wherever the eye is, and the rays run there.",
    unit: "stage",
  },
  {
    id: "rake",
    name: "Raked floors",
    meaning: "A raked floor rises as it goes upstage, and its rays meet above the horizon.",
    unit: "stage",
  },
  {
    id: "masking",
    name: "Masking",
    meaning: "Legs and borders frame the set; their edges follow the same rules of depth and height.",
    unit: "stage",
  },
  {
    id: "reading-back",
    name: "Reading back to the plan",
    meaning: "From a place in the picture to its place on the ground plan.",
    unit: "reading",
  },
  {
    id: "whole-set",
    name: "Whole sets",
    meaning: "Keeping every rule at once, from the first corner to the last.",
    unit: "sets",
  },
];

/** The skill of an id; one that a teacher named goes by its id in words. */
export function skillOf(id: string): Skill {
  const known = SKILLS.find((skill) => skill.id === id);
  if (known) return known;
  const words = id.replaceAll("-", " ");
  return {
    id,
    name: words.charAt(0).toUpperCase() + words.slice(1),
    meaning: "A skill that your teacher's exercises name.",
    unit: "sets",
  };
}

/** A skill's name in the middle of a sentence. */
export function nameInside({ name }: Pick<Skill, "name">): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}
