/** What the desk knows of the library of whoever drafts: read by the server with the page, asked for by nobody else. */
export type Library =
  | {
      readonly kind: "open";
      readonly ownerId: string;
      readonly plans: readonly {
        readonly planId: string;
        readonly edition: number;
        readonly changedAt: string;
        readonly thrown: boolean;
      }[];
    }
  /** Somebody is signed in, and the library cannot be looked at. */
  | { readonly kind: "closed"; readonly sentence: string };
