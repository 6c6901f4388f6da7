import type { Metadata } from "next";
import { ClassFrame } from "../../../class-frame";
import { ClassPaths } from "../../../class-paths";
import { Closed } from "../../../closed";
import { ownClass } from "../../../own-class";
import { readChoices } from "./read-choices";
import { SetHomeworkForm } from "./set-homework-form";
import "../homework.css";

export const metadata: Metadata = { title: "Set homework" };

type Props = { readonly params: Promise<{ readonly classId: string }> };

/** Where a teacher sets homework to a class. */
export default async function SetHomeworkPage({ params }: Props) {
  const { classId } = await params;
  const own = await ownClass(classId, "set-homework");
  if (!own.ok) return <Closed sentence={own.sentence} />;
  return (
    <ClassFrame title="Set homework" name={own.name} lead={own.title}>
      <ClassPaths classId={classId} />
      <SetHomeworkForm classId={classId} {...(await readChoices(own.store, classId))} />
    </ClassFrame>
  );
}
