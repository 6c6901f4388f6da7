import Link from "next/link";
import type { ComponentPropsWithRef, ReactNode } from "react";

type Weight = "main" | "plain" | "small";

/** A button in words, in a ruled box. */
export function Press({
  weight = "plain",
  className = "",
  ...rest
}: ComponentPropsWithRef<"button"> & { readonly weight?: Weight }) {
  return <button type="button" {...rest} data-weight={weight} className={`press ruled ${className}`} />;
}

/** A link that looks like one. */
export function PressLink({
  href,
  weight = "plain",
  children,
}: {
  readonly href: string;
  readonly weight?: Weight;
  readonly children: ReactNode;
}) {
  return (
    <Link href={href} data-weight={weight} className="press ruled" prefetch={false}>
      {children}
    </Link>
  );
}
