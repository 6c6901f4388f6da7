/** What the table's pencils are like on the screen, as its style has them just now. */
export type Pens = {
  readonly graphite: string;
  readonly faint: string;
  readonly soft: string;
  readonly blue: string;
  readonly red: string;
  readonly lit: string;
  readonly paper: string;
  readonly floor: string;
  readonly wall: string;
  /** The lettering face, as a family of fonts. */
  readonly hand: string;
  /** A thin line is at least so wide, and marks are larger by so much, pixels and times. */
  readonly thinPx: number;
  readonly marks: number;
};

/** Reads the pencils for what is painted inside an element. */
export function readPens(element: Element): Pens {
  const style = getComputedStyle(element);
  const of = (name: string) => style.getPropertyValue(name).trim();
  const number = (name: string, otherwise: number) => Number.parseFloat(of(name)) || otherwise;
  return {
    graphite: of("--graphite"),
    faint: of("--graphite-faint"),
    soft: of("--graphite-soft"),
    blue: of("--blue"),
    red: of("--red"),
    lit: of("--lit"),
    paper: of("--paper"),
    floor: of("--paper-floor"),
    wall: of("--paper-wall"),
    hand: of("--hand"),
    thinPx: number("--thin-px", 1),
    marks: number("--mark", 1),
  };
}
