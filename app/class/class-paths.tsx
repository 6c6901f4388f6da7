import Link from "next/link";
import "./gradebook.css";

const PATHS = [
  ["", "The class"],
  ["/gradebook", "Gradebook"],
  ["/pile", "A pile of drawings"],
  ["/teach-again", "Teach again"],
  ["/live", "Everyone places it"],
] as const;

/** The ways between the pages of one class; `here` is the page's own, without a link. */
export function ClassPaths({ classId, here }: { readonly classId: string; readonly here?: (typeof PATHS)[number][0] }) {
  return (
    <nav className="class-paths" aria-label="This class">
      {PATHS.map(([path, words]) =>
        path === here ? (
          <span key={path} aria-current="page">
            {words}
          </span>
        ) : (
          <Link key={path} href={`/class/${classId}${path}`} className="plain-link" prefetch={false}>
            {words}
          </Link>
        ),
      )}
    </nav>
  );
}
