"use client";

import { useEffect, useState } from "react";
import { LIGHTS, type Light, type Look, readLook, SIZES, type Size, writeLook } from "./look";

const LIGHT_WORDS: Readonly<Record<Light, string>> = {
  device: "Light as the device",
  paper: "Paper",
  dark: "House lights down",
};
const SIZE_WORDS: Readonly<Record<Size, string>> = { desk: "Desk size", projector: "Projector size" };

/** Two lists that set the light and the size of the whole table at once, and keep them. */
export function LookSwitch() {
  const [look, setLook] = useState<Look>({ light: "device", size: "desk" });

  // The server already put the look on the page; the lists take it from there.
  useEffect(() => {
    const { light, size } = document.documentElement.dataset;
    setLook(readLook(`${light}.${size}`));
  }, []);

  const change = (next: Look) => {
    setLook(next);
    document.documentElement.dataset.light = next.light;
    document.documentElement.dataset.size = next.size;
    // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store API needs https, and a class's network has none
    document.cookie = writeLook(next);
  };

  return (
    <div className="flex gap-2 text-sm">
      <select
        aria-label="Light"
        className="look-list"
        value={look.light}
        onChange={(event) => change({ ...look, light: event.target.value as Light })}
      >
        {LIGHTS.map((light) => (
          <option key={light} value={light}>
            {LIGHT_WORDS[light]}
          </option>
        ))}
      </select>
      <select
        aria-label="Size"
        className="look-list"
        value={look.size}
        onChange={(event) => change({ ...look, size: event.target.value as Size })}
      >
        {SIZES.map((size) => (
          <option key={size} value={size}>
            {SIZE_WORDS[size]}
          </option>
        ))}
      </select>
    </div>
  );
}

/** The same, folded away where there is little room. */
export function LookDisclosure() {
  return (
    <details className="look-fold">
      <summary className="plain-link text-sm">Look</summary>
      <div className="ruled">
        <LookSwitch />
      </div>
    </details>
  );
}
