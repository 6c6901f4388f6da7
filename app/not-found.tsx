import { PlainPage } from "./_parts/plain-page";

export default function NotFound() {
  return (
    <PlainPage title="There is no such sheet">
      <p>
        Nothing in this set of exercises goes by that address. The address may be mistyped, or the exercise may have
        been renamed or taken away by your teacher.
      </p>
      <p>Choose an exercise from the list.</p>
    </PlainPage>
  );
}
