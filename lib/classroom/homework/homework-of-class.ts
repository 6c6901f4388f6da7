import type { Store } from "../store/store";
import type { MemberTable } from "../store/tables/class-tables";
import type { HomeworkItemTable, HomeworkTable } from "../store/tables/homework-tables";
import { dueAt, isLate, isSetTo, type Terms } from "./due";
import { nameOf } from "./what-is-due";

export type HomeworkRow = Readonly<HomeworkTable> & {
  readonly items: number;
  /** Students it is set to and who are not excused, and those of them who handed everything in. */
  readonly students: number;
  readonly done: number;
};

/** The homework of a class, the newest first, with how many have handed it in. */
export async function homeworkOfClass({ db }: Store, classId: string): Promise<readonly HomeworkRow[]> {
  const set = await db.selectFrom("homework").selectAll().where("class_id", "=", classId).execute();
  const ids = ["", ...set.map(({ id }) => id)];
  const items = await db
    .selectFrom("homework_item")
    .selectAll()
    .where("homework_id", "in", ids)
    .where("taken_out_at", "is", null)
    .execute();
  const terms = await db.selectFrom("homework_member").selectAll().where("homework_id", "in", ids).execute();
  const members = await membersOf({ db }, classId);
  const handIns = await db
    .selectFrom("hand_in")
    .select(["item_id", "member_id"])
    .distinct()
    .where("item_id", "in", ["", ...items.map(({ id }) => id)])
    .execute();
  const handedIn = new Set(handIns.map((row) => `${row.item_id} ${row.member_id}`));
  return set
    .map((homework) => {
      const own = items.filter((item) => item.homework_id === homework.id);
      const students = members.filter((member) => {
        const agreed = terms.find((row) => row.homework_id === homework.id && row.member_id === member.id);
        return isSetTo(homework, agreed) && agreed?.excused !== 1;
      });
      const done = students.filter((member) => own.every((item) => handedIn.has(`${item.id} ${member.id}`)));
      return { ...homework, items: own.length, students: students.length, done: done.length };
    })
    .sort((a, b) => (a.created_at < b.created_at ? 1 : -1));
}

export type WorkCell = {
  readonly itemId: string;
  readonly times: number;
  readonly lastAt: string | null;
  readonly late: boolean;
  /** The last of it that came in after it was due, whether it was counted as in time or not. */
  readonly cameLate: CameLate | null;
};

/** Work that came in late: when it was made, by the student's own clock, and what the teacher made of it. */
export type CameLate = {
  readonly handInId: string;
  readonly madeAt: string;
  readonly receivedAt: string;
  readonly inTimeReason: string | null;
};

export type StudentRow = {
  readonly memberId: string;
  readonly name: string;
  readonly dueAt: string | null;
  /** Null where the student has the date of all. */
  readonly ownDueAt: string | null;
  readonly overdue: boolean;
  readonly excused: boolean;
  readonly cells: readonly WorkCell[];
};

export type HomeworkSheet = {
  readonly homework: Readonly<HomeworkTable>;
  readonly items: readonly (Readonly<HomeworkItemTable> & { readonly title: string | null })[];
  readonly students: readonly StudentRow[];
};

/** One homework with every student it is set to, by name: what each has handed in and when. */
export async function homeworkSheet(
  { db }: Store,
  homework: Readonly<HomeworkTable>,
  now = new Date(),
): Promise<HomeworkSheet> {
  const items = await db
    .selectFrom("homework_item")
    .selectAll()
    .where("homework_id", "=", homework.id)
    .where("taken_out_at", "is", null)
    .execute();
  const terms = await db.selectFrom("homework_member").selectAll().where("homework_id", "=", homework.id).execute();
  const handIns = await db
    .selectFrom("hand_in")
    .select(["id", "item_id", "member_id", "made_at", "received_at", "late", "in_time_reason"])
    .where("item_id", "in", ["", ...items.map(({ id }) => id)])
    .orderBy("received_at")
    .execute();
  const placed = items.sort((a, b) => a.place - b.place);
  const members = await membersOf({ db }, homework.class_id);
  const rowOf = (member: Pick<MemberTable, "id" | "name">, agreed: Terms): StudentRow => {
    const due = dueAt(homework, agreed);
    return {
      memberId: member.id,
      name: member.name,
      dueAt: due,
      ownDueAt: agreed?.due_at ?? null,
      overdue: isLate(due, now),
      excused: agreed?.excused === 1,
      cells: placed.map(({ id }) => {
        const rows = handIns.filter((row) => row.item_id === id && row.member_id === member.id);
        const last = rows.at(-1);
        const late = rows.filter(({ received_at }) => isLate(due, new Date(received_at))).at(-1);
        return {
          itemId: id,
          times: rows.length,
          lastAt: last?.received_at ?? null,
          late: last?.late === 1,
          cameLate: late
            ? {
                handInId: late.id,
                madeAt: late.made_at,
                receivedAt: late.received_at,
                inTimeReason: late.in_time_reason,
              }
            : null,
        };
      }),
    };
  };
  const students = members.flatMap((member) => {
    const agreed = terms.find((row) => row.member_id === member.id);
    return isSetTo(homework, agreed) ? [rowOf(member, agreed)] : [];
  });
  return { homework, items: placed.map((item) => ({ ...item, title: nameOf(item, "").title })), students };
}

async function membersOf({ db }: Pick<Store, "db">, classId: string) {
  const members = await db
    .selectFrom("member")
    .select(["id", "name"])
    .where("class_id", "=", classId)
    .where("removed", "=", 0)
    .execute();
  // Databases sort letters each in their own way.
  return members.sort((a, b) => a.name.localeCompare(b.name, "en"));
}
