"use client";

import { type DragEvent, useEffect, useState } from "react";

export type Device = { readonly canLive: boolean; readonly isHandheld: boolean };

/** What the device is, once the browser can say; a live view needs a page that was served securely. */
export function useDevice(): Device | null {
  const [device, setDevice] = useState<Device | null>(null);
  useEffect(() => {
    const canLive = window.isSecureContext && typeof navigator.mediaDevices?.getUserMedia === "function";
    setDevice({ canLive, isHandheld: window.matchMedia("(pointer: coarse)").matches });
  }, []);
  return device;
}

/** Takes a picture that is pasted anywhere on the page. */
export function usePaste(onFile: (file: Blob) => void): void {
  useEffect(() => {
    const paste = (event: ClipboardEvent) => {
      const file = [...(event.clipboardData?.files ?? [])].find(looksLikePicture);
      if (file) onFile(file);
    };
    window.addEventListener("paste", paste);
    return () => window.removeEventListener("paste", paste);
  }, [onFile]);
}

/** A paper that takes a picture that is dropped on it. */
export function useDrop(onFile: (file: Blob) => void) {
  const [over, setOver] = useState(false);
  return {
    "data-over": over,
    onDragOver: (event: DragEvent) => {
      event.preventDefault();
      setOver(true);
    },
    onDragLeave: () => setOver(false),
    onDrop: (event: DragEvent) => {
      event.preventDefault();
      setOver(false);
      const file = [...event.dataTransfer.files].find(looksLikePicture) ?? event.dataTransfer.files[0];
      if (file) onFile(file);
    },
  };
}

function looksLikePicture({ type, name }: File): boolean {
  return type.startsWith("image/") || /\.hei[cf]$/i.test(name);
}
