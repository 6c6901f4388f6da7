/** A moment as the browser's date field wants it: local, to the minute. */
export function localTime(at: string): string {
  const moment = new Date(at);
  return new Date(moment.getTime() - moment.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
}
