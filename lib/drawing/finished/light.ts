import type { Vector3 } from "../../geometry/matrix3";

/** Where the light comes from: over the audience's left shoulder, high. A direction of length 1 toward the light. */
export const TO_LIGHT: Vector3 = [-0.62, -0.42, Math.sqrt(1 - 0.62 ** 2 - 0.42 ** 2)];
