import { behindInstead } from "./behind-instead";
import { borrowedVanishingPoint } from "./borrowed-vanishing-point";
import { doubleScale } from "./double-scale";
import { evenSplit } from "./even-split";
import { evenSteps } from "./even-steps";
import { flatFloor } from "./flat-floor";
import { fromBackWall } from "./from-back-wall";
import { fromTheJamb } from "./from-the-jamb";
import { fullHeight } from "./full-height";
import { fullWidth } from "./full-width";
import type { FittedHabit, Habit } from "./habit";
import { halfScale } from "./half-scale";
import { levelTop } from "./level-top";
import { parallelTop } from "./parallel-top";
import { planAngle } from "./plan-angle";
import { planDepth } from "./plan-depth";
import { squareWall } from "./square-wall";
import { tooDeep } from "./too-deep";
import { tooShallow } from "./too-shallow";
import { topToCentre } from "./top-to-centre";
import { wrongSide } from "./wrong-side";

/** The wrong ideas the tutor knows. */
export const HABITS: readonly (Habit | FittedHabit)[] = [
  planDepth,
  tooShallow,
  tooDeep,
  fromBackWall,
  fullWidth,
  wrongSide,
  fromTheJamb,
  halfScale,
  doubleScale,
  squareWall,
  planAngle,
  borrowedVanishingPoint,
  flatFloor,
  evenSteps,
  behindInstead,
  parallelTop,
  fullHeight,
  levelTop,
  topToCentre,
  evenSplit,
];
