"use client";

import { useEffect, useLayoutEffect, useRef } from "react";
import type { Desk } from "../desk/desk";
import { useDeskStore } from "../desk/draft-context";
import { sayAim } from "../hand/aim-at";

const useBrowserLayoutEffect = typeof window === "undefined" ? useEffect : useLayoutEffect;

/** Words that change sooner than this after the last are painted, and written when they rest, milliseconds. */
const REST_MS = 150;

/**
 * Where the pencil is held, or where what is dragged would come to. While it moves the words are painted: writing them would have
 * the page laid out at every frame.
 */
export function Where({ otherwise }: { readonly otherwise: string }) {
  const store = useDeskStore();
  const written = useRef<HTMLSpanElement>(null);
  const painted = useRef<HTMLCanvasElement>(null);

  useBrowserLayoutEffect(() => {
    const [text, canvas] = [written.current, painted.current];
    if (!text || !canvas) return;
    const context = typeof Path2D === "undefined" ? null : canvas.getContext("2d");
    let said = "";
    let last = Number.NEGATIVE_INFINITY;
    let asked = 0;
    let later: ReturnType<typeof setTimeout> | undefined;
    const write = () => {
      cancelAnimationFrame(asked);
      asked = 0;
      text.textContent = said;
      text.style.removeProperty("visibility");
      context?.clearRect(0, 0, canvas.width, canvas.height);
    };
    let foot: readonly [number, number] = [0, 0];
    const paint = () => {
      asked = 0;
      context?.clearRect(0, 0, canvas.width, canvas.height);
      context?.fillText(said, ...foot);
    };
    const tell = (desk: Desk) => {
      const words = desk.noted || sayAim(desk.aim, desk) || otherwise;
      if (words === said) return;
      said = words;
      clearTimeout(later);
      const now = performance.now();
      const moves = now - last < REST_MS && words !== otherwise;
      last = now;
      if (!moves || !context) return write();
      if (text.style.visibility === "") foot = standIn(canvas, context, text);
      if (asked === 0) asked = requestAnimationFrame(paint);
      later = setTimeout(write, REST_MS);
    };
    tell(store.getState());
    const stop = store.subscribe(tell);
    return () => {
      stop();
      clearTimeout(later);
      cancelAnimationFrame(asked);
    };
  }, [store, otherwise]);

  return (
    <p className="draft-where" aria-hidden="true">
      <span ref={written}>{otherwise}</span>
      <canvas ref={painted} className="draft-live" />
    </p>
  );
}

/** The canvas takes the size and the pencil of the words it stands in for; returns where their line begins on it, pixels. */
function standIn(canvas: HTMLCanvasElement, context: CanvasRenderingContext2D, text: HTMLElement): [number, number] {
  const density = window.devicePixelRatio;
  const { left, top, width, height } = canvas.getBoundingClientRect();
  const line = text.getBoundingClientRect();
  Object.assign(canvas, { width: Math.round(width * density), height: Math.round(height * density) });
  const { fontStyle, fontWeight, fontSize, fontFamily, color } = getComputedStyle(text);
  context.setTransform(density, 0, 0, density, 0, 0);
  // The shorthand is empty as soon as a member cannot be said in it.
  context.font = `${fontStyle} ${fontWeight} ${fontSize} ${fontFamily}`;
  context.fillStyle = color;
  text.style.visibility = "hidden";
  const { fontBoundingBoxAscent: up, fontBoundingBoxDescent: down } = context.measureText(text.textContent ?? "");
  return [line.left - left, line.top - top + (line.height + up - down) / 2];
}
