import type { Metadata } from "next";
import { ClassFrame } from "../../../class-frame";
import { ClassPaths } from "../../../class-paths";
import { Closed } from "../../../closed";
import { ownClass } from "../../../own-class";
import { planItem } from "./form-state";
import { readChoices } from "./read-choices";
import { SetHomeworkForm } from "./set-homework-form";
import "../homework.css";

export const metadata: Metadata = { title: "Set homework" };

type Props = {
  readonly params: Promise<{ readonly classId: string }>;
  readonly searchParams: Promise<{
    readonly plan?: string | readonly string[];
    readonly from?: string | readonly string[];
  }>;
};

/** Where a teacher sets homework to a class: with a plan of the library in it already, or with what comes from the desk. */
export default async function SetHomeworkPage({ params, searchParams }: Props) {
  const [{ classId }, { plan, from }] = [await params, await searchParams];
  const own = await ownClass(classId, "set-homework");
  if (!own.ok) return <Closed sentence={own.sentence} />;
  const choices = await readChoices(own.store, classId, own.teacherId);
  return (
    <ClassFrame title="Set homework" name={own.name} lead={own.title}>
      <ClassPaths classId={classId} />
      <SetHomeworkForm
        classId={classId}
        first={choices.plans.filter(({ id }) => id === plan).map(planItem)}
        takesDesk={from === "desk"}
        {...choices}
      />
    </ClassFrame>
  );
}
