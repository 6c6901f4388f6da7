import type { Unit } from "../exercise/exercise";
import type { TraceParameters } from "./trace-skill";

/** What the exercises train. */
export type Skill = {
  /** As the exercises list it. */
  readonly id: string;
  /** For a heading, or the beginning of a sentence. */
  readonly name: string;
  /** The name is a plural: "Heights were mastered". */
  readonly many: boolean;
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
    many: false,
    meaning: "What stands on the plaster line is drawn at its true size, read off the rule.",
    unit: "floor",
  },
  {
    id: "ray-to-cvp",
    name: "Rays to the CVP",
    many: true,
    meaning: "A line square to the plaster line runs to the centre vanishing point, and offsets draw in along it.",
    unit: "floor",
  },
  {
    id: "depth-by-eye",
    name: "Depth by eye",
    many: false,
    meaning: "Judging how far up the floor of the picture a depth of the plan falls.",
    unit: "floor",
  },
  {
    id: "diagonals",
    name: "Halves by diagonals",
    many: true,
    meaning: "Halves and quarters of a depth lie where the diagonals of the floor cross.",
    unit: "floor",
  },
  {
    id: "raking-wall",
    name: "Raking walls",
    many: true,
    meaning: "A raking wall's foot and top run to a vanishing point of the wall's own on the horizon.",
    unit: "walls",
  },
  {
    id: "height",
    name: "Heights",
    many: true,
    meaning: "A height is true on the plaster line and draws in with depth, towards the horizon.",
    unit: "walls",
  },
  {
    id: "opening",
    name: "Openings in a wall",
    many: true,
    meaning: "A wall that runs away is not divided as the plan divides it: its far parts draw in.",
    unit: "openings",
  },
  {
    id: "furniture",
    name: "Furniture",
    many: false,
    meaning: "A piece of furniture is drawn as the box it fits into, standing on the floor.",
    unit: "furniture",
  },
  {
    id: "platform",
    name: "Platforms",
    many: true,
    meaning: "A platform's top is a floor of its own, nearer to the horizon than the stage floor.",
    unit: "levels",
  },
  {
    id: "stairs",
    name: "Stairs",
    many: true,
    meaning: "Nosings rise by equal risers, and their treads draw in with depth.",
    unit: "levels",
  },
  {
    id: "apron",
    name: "Before the plaster line",
    many: false,
    meaning: "On the apron things are larger than true size, and are found by running the ray forward.",
    unit: "stage",
  },
  {
    id: "off-centre-eye",
    name: "An eye off the centre line",
    many: false,
    meaning: "The vanishing point stands before the eye, wherever the eye is, and the rays run there.",
    unit: "stage",
  },
  {
    id: "rake",
    name: "Raked floors",
    many: true,
    meaning: "A raked floor rises as it goes upstage, and its rays meet above the horizon.",
    unit: "stage",
  },
  {
    id: "masking",
    name: "Masking",
    many: false,
    meaning: "Legs and borders frame the set; their edges follow the same rules of depth and height.",
    unit: "stage",
  },
  {
    id: "reading-back",
    name: "Reading back to the plan",
    many: false,
    meaning: "From a place in the picture to its place on the ground plan.",
    unit: "reading",
  },
  {
    id: "whole-set",
    name: "Whole sets",
    many: true,
    meaning: "Keeping every rule at once, from the first corner to the last.",
    unit: "sets",
  },
];
