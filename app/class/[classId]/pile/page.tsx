import type { Metadata } from "next";
import { classWithMembers } from "@/lib/classroom/accounts/classes";
import { ClassFrame } from "../../class-frame";
import { ClassPaths } from "../../class-paths";
import { Closed } from "../../closed";
import { ownClass } from "../../own-class";
import { Pile } from "./pile";

export const metadata: Metadata = { title: "A pile of drawings" };

type Props = { readonly params: Promise<{ readonly classId: string }> };

/** Drawings on paper, photographed or scanned all at once, on their way to the gradebook. */
export default async function PilePage({ params }: Props) {
  const { classId } = await params;
  const own = await ownClass(classId, "hand-in-for");
  if (!own.ok) return <Closed sentence={own.sentence} />;
  const found = await classWithMembers(own.store, classId);
  const students = (found?.members ?? []).map(({ id, name, number }) => ({ memberId: id, name, number }));
  return (
    <ClassFrame title="A pile of drawings" name={own.name} lead={own.title}>
      <ClassPaths classId={classId} here="/pile" />
      <Pile classId={classId} students={students} />
    </ClassFrame>
  );
}
