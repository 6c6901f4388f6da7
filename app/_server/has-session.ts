/** The name of a session's cookie, as the accounts' library makes it with our beginning; by https it has one more before it. */
const COOKIE = /(?:^|;\s*)(?:__Secure-)?plasterline\.session_token=[^;]/;

/** Whether a browser says that someone is signed in in it. Whether that is true only the store knows. */
export function hasSession(headers: Headers): boolean {
  return COOKIE.test(headers.get("cookie") ?? "");
}
