/**
 * The frame of reference: the one place that states it; everything else imports it.
 *
 * Origin: where the centre line crosses the plaster line, on the stage floor.
 * x: positive to the viewer's right (stage left). y: positive upstage. z: positive up. Right-handed.
 * Lengths are metres and angles radians; a name says so when they are not (`Deg`, `Mm`, `Px`).
 *
 * The picture plane is the plane of the plaster line, y = 0. Picture coordinates are metres on that
 * plane: X from the centre line, Z from the stage floor. On it everything is true size.
 * The eye stands at (offset, -distance, eyeHeight).
 *
 * The phantom `frame` member keeps a point of one frame from being passed for a point of another; it
 * never exists at run time, so the tuples survive JSON.
 */

/** A point on or over the stage, metres. */
export type StagePoint = readonly [x: number, y: number, z: number] & { readonly frame?: "stage" };

/** A point of the ground plan (a stage point seen from above), metres. */
export type PlanPoint = readonly [x: number, y: number] & { readonly frame?: "plan" };

/** A point of the picture, metres on the picture plane. */
export type PicturePoint = readonly [X: number, Z: number] & { readonly frame?: "picture" };

/** A direction over the stage; its length carries no meaning. */
export type StageDirection = readonly [dx: number, dy: number, dz: number] & { readonly frame?: "stage direction" };
