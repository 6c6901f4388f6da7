/** In which light the table is seen: as the device has it, on paper, or with the house lights down. */
export const LIGHTS = ["device", "paper", "dark"] as const;
export type Light = (typeof LIGHTS)[number];

/** For a desk, or for a projector seen from the back of the room. */
export const SIZES = ["desk", "projector"] as const;
export type Size = (typeof SIZES)[number];

export type Look = { readonly light: Light; readonly size: Size };

export const LOOK_COOKIE = "plasterline-look";
const A_YEAR_S = 31_536_000;

/** The look a cookie's value says, `device.desk` for anything else. */
export function readLook(value: string | undefined): Look {
  const [light, size] = (value ?? "").split(".");
  return {
    light: LIGHTS.find((each) => each === light) ?? "device",
    size: SIZES.find((each) => each === size) ?? "desk",
  };
}

/** The line for `document.cookie` that keeps a look. */
export function writeLook(look: Look): string {
  return `${LOOK_COOKIE}=${look.light}.${look.size};path=/;max-age=${A_YEAR_S};samesite=lax`;
}
