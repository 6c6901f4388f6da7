/** A student's place in one class. */
export type Membership = { readonly memberId: string; readonly classId: string };

/** Who asks. */
export type Person =
  | { readonly kind: "nobody" }
  | { readonly kind: "teacher"; readonly userId: string; readonly name: string }
  | {
      readonly kind: "student";
      readonly userId: string;
      readonly name: string;
      /** Places that were taken away are not among them. */
      readonly places: readonly Membership[];
    };

/** What is asked about, as far as it decides who may. */
export type Subject = {
  readonly classId: string;
  readonly teacherId: string;
  /** Whose work or place it is, where it is one student's. */
  readonly memberId?: string | null;
  /** Whether its marks and the truth may be shown to the student by now. */
  readonly released?: boolean;
};

/** What is about no class, and nobody's in particular: no id is empty. */
export const SCHOOL: Subject = { classId: "", teacherId: "" };
