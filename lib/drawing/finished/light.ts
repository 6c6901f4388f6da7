import type { Vector3 } from "../../geometry/matrix3";

const [FROM_LEFT, FROM_FRONT] = [0.5, 0.2] as const;

/** Where the light comes from: high over the audience's left shoulder. A direction of length 1 toward the light. */
export const TO_LIGHT: Vector3 = [-FROM_LEFT, -FROM_FRONT, Math.sqrt(1 - FROM_LEFT ** 2 - FROM_FRONT ** 2)];
