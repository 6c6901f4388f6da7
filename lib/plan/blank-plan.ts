import type { Plan } from "./plan";

/** A plan with nothing on it. */
export const BLANK_PLAN: Plan = {
  corners: new Map(),
  walls: [],
  platforms: [],
  stairs: [],
  furniture: [],
  columns: [],
  masking: [],
};
