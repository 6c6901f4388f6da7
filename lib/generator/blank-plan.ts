import type { Plan } from "../plan/plan";

/** A plan with nothing in it, to add to. */
export const BLANK_PLAN: Plan = {
  corners: new Map(),
  walls: [],
  platforms: [],
  stairs: [],
  furniture: [],
  columns: [],
  masking: [],
};
