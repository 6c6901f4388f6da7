/**
 * The size of a part: its usual size, or a share of the room it is cut from where that is smaller. So no part is ever
 * negative or larger than the piece, however odd the piece. The usual sizes are common practice, no source.
 */
export function thickness(usual: number, room: number, share: number): number {
  return Math.min(usual, room * share);
}

/** Into how many parts of about `usual` a length goes, at least `least`, at most `most`. */
export function partsIn(length: number, usual: number, least: number, most: number): number {
  return Math.max(least, Math.min(most, Math.round(length / usual)));
}
