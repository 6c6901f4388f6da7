import { cache } from "react";
import { findExercise, readCourse } from "@/app/_parts/course/course";

/** The exercise of an address, read once for a page and its title. */
export const findDemonstrated = cache(async (id: string) => findExercise(await readCourse(), id));
