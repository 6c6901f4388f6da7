import { z } from "zod";
import { LONGEST_PASSWORD, SHORTEST_PASSWORD } from "./auth";
import { LONGEST_NAME } from "./person-name";

/** What the forms of Class send, and the sentences for what cannot be taken. */
const code = z.string().max(20, "A class code has six letters.");
const name = z.string().trim().min(1, "Write a name.").max(LONGEST_NAME, `A name has at most ${LONGEST_NAME} letters.`);
const email = z.string().trim().max(200).pipe(z.email("This is no e-mail address: something is missing or too much."));
const id = z.string().min(1).max(64);

const password = z
  .string()
  .min(SHORTEST_PASSWORD, `A password needs at least ${SHORTEST_PASSWORD} letters; a few words do well.`)
  .max(LONGEST_PASSWORD, `A password has at most ${LONGEST_PASSWORD} letters.`);
const oneTimeWord = z.string().max(60, "A word has twenty letters.");

export const FirstTeacherRequest = z.strictObject({
  name,
  email,
  password,
  /** Not asked for at the server itself. */
  word: z.string().max(20).default(""),
});
export const SignInRequest = z.strictObject({ email: z.string().max(200), password: z.string().max(LONGEST_PASSWORD) });
export const JoinRequest = z.strictObject({ code, name });
export const BackRequest = z.strictObject({ code, name, passphrase: z.string().max(100) });
export const MakeClassRequest = z.strictObject({ title: name });
export const ClassRequest = z.strictObject({ classId: id });
export const MemberRequest = z.strictObject({ memberId: id });
export const KeepRequest = z.strictObject({
  classId: id,
  keepDays: z.number().int().min(0).max(3650, "Ten years are the most."),
});
export const InviteRequest = z.strictObject({
  note: z.string().max(LONGEST_NAME, `This has at most ${LONGEST_NAME} letters.`),
});
export const InvitedRequest = z.strictObject({ word: oneTimeWord, name, email, password });
export const MakeWayBackRequest = z.strictObject({ email: z.string().max(200) });
export const WayBackRequest = z.strictObject({ word: oneTimeWord, password });
export const PasswordRequest = z.strictObject({ old: z.string().max(LONGEST_PASSWORD), password });
export const WordRequest = z.strictObject({ wordId: id });
export const NothingRequest = z.strictObject({});
