import { makeWayBack } from "../classroom/accounts/way-back";
import { sayWord, writeWordLink } from "../classroom/accounts/word-link";
import { openForErrand } from "../classroom/store/open-store";
import { dataPlace } from "./data-place";

const HELP = `Makes a way back for a teacher who lost the password, beside a running server or without one.

  npm run way-back -- E-MAIL      for the teacher who signs in with this address

It prints a word that works once, within an hour: give it to nobody else. What the teacher was signed in with ends.`;

const NOTHING =
  "No class is kept here, so there is no teacher either. Is PLASTERLINE_DATA or DATABASE_URL set as for the server?";

const [email, ...more] = process.argv.slice(2);
if (email === undefined || email.startsWith("-") || more.length > 0) console.log(HELP);
else await make(email);

async function make(address: string): Promise<void> {
  const complaint = await tell(address);
  if (complaint === undefined) return;
  console.error(complaint);
  process.exitCode = 1;
}

async function tell(address: string): Promise<string | undefined> {
  const opening = await openForErrand(dataPlace(process.env));
  if (!opening.ok) return opening.refusal.reason === "nothing" ? NOTHING : opening.refusal.sentence;
  const { store } = opening;
  try {
    const made = await makeWayBack(store, { email: address, madeBy: null });
    if (!made.ok) return made.sentence;
    console.log(`A way back for ${made.name}, which works once and for an hour:

  ${sayWord(made.word)}

Type it at /class/way-back of your Plasterline, or put this behind its address:

  ${writeWordLink("way-back", made.word)}`);
    return undefined;
  } finally {
    await store.close();
  }
}
