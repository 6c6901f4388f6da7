import { readLook, writeLook } from "@/app/_parts/look/look";

/** Fills the screen, or leaves it again; a browser that does not let a page do so stays as it is. */
export function toggleFullScreen() {
  const done = document.fullscreenElement ? document.exitFullscreen() : document.documentElement.requestFullscreen?.();
  done?.catch(() => undefined);
}

/** From paper to house lights down and back, kept as every page's look is. */
export function toggleLight() {
  const { dataset } = document.documentElement;
  const look = readLook(`${dataset.light}.${dataset.size}`);
  const dark =
    look.light === "dark" || (look.light === "device" && window.matchMedia("(prefers-color-scheme: dark)").matches);
  const next = { ...look, light: dark ? "paper" : "dark" } as const;
  dataset.light = next.light;
  // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store API needs https, and a class's network has none
  document.cookie = writeLook(next);
}
