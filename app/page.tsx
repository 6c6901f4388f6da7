import Link from "next/link";
import { readCourse } from "./_course/course";

export default async function Home() {
  const { exercises } = await readCourse();
  return (
    <main className="p-6">
      <h1 className="lettering text-3xl">Plasterline</h1>
      <ul>
        {exercises.map((exercise) => (
          <li key={exercise.id}>
            <Link href={`/practise/${exercise.id}`}>{exercise.title}</Link>
          </li>
        ))}
      </ul>
    </main>
  );
}
