import { z } from "zod";
import { VOTE_MOVES } from "./vote-stage";

/** What the pages of a vote send. */
const id = z.string().min(1).max(100);
/** Metres; a stage is no kilometre wide. */
const metres = z.number().min(-1000).max(1000);
const round = z.number().int().min(1).max(100);

export const OpenVoteRequest = z.strictObject({
  /** Without one, the vote is opened in the teacher's newest class. */
  classId: id.nullish(),
  exerciseId: id,
  point: z.string().min(1).max(200),
});
export const VoteRequest = z.strictObject({ voteId: id });
export const MoveVoteRequest = z.strictObject({ voteId: id, round, move: z.enum(VOTE_MOVES) });
export const GuessRequest = z.strictObject({ voteId: id, round, at: z.tuple([metres, metres]) });

/** A guess is a few dozen bytes. */
export const MOST_GUESS_BYTES = 1024;
