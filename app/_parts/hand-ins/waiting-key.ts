/** The keys of homework that waits to be sent begin so. */
export const WAITING_KEY = "plasterline.hand-in.";
