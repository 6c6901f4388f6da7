"use client";

import { type ReactNode, useEffect, useRef } from "react";
import { Press } from "@/app/_parts/press";

/** A card laid over the sheet: it has the keys until it is put away. */
export function Card({
  title,
  onAway,
  children,
}: {
  readonly title: string;
  readonly onAway: () => void;
  readonly children: ReactNode;
}) {
  const card = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const dialog = card.current;
    if (dialog && !dialog.open) dialog.showModal();
    return () => dialog?.close();
  }, []);
  return (
    <dialog
      ref={card}
      className="demonstration-card"
      aria-label={title}
      onCancel={(event) => {
        event.preventDefault();
        onAway();
      }}
    >
      <div className="card-head">
        <h2 className="lettering">{title}</h2>
        <Press onClick={onAway}>Put away</Press>
      </div>
      {children}
    </dialog>
  );
}
