import { PlainPage } from "@/app/_parts/plain-page";

/** Class when its store cannot be opened: why, and that the rest goes on. */
export function Closed({ sentence }: { readonly sentence: string }) {
  return (
    <PlainPage title="Class is closed just now">
      <p>{sentence}</p>
      <p>Practise and your record work all the same, and what you have drawn is kept in this browser.</p>
    </PlainPage>
  );
}
