import type { DeskStore } from "../desk/desk";

/** Of a moment in which nothing else is to be done so much is left free, milliseconds. */
const LEFT_FREE_MS = 5;
/** Where a browser tells of no such moments, steps are done again for so long at a time, and after such a pause. */
const AT_A_TIME_MS = 10;
const PAUSE_MS = 50;

/** Does the steps of a plan that was opened again while nothing else is to be done, so that it stands on the desk before them. */
export function recallAtLeisure(store: DeskStore): void {
  const mine = store.getState().kept;
  const goOn = (mayGoOn: () => boolean) => {
    if (mine === null || store.getState().kept !== mine) return;
    store.getState().recall(mayGoOn);
    wait();
  };
  const wait = () => {
    if (typeof requestIdleCallback === "function") {
      requestIdleCallback((idle) => goOn(() => idle.timeRemaining() > LEFT_FREE_MS));
      return;
    }
    setTimeout(() => {
      const end = performance.now() + AT_A_TIME_MS;
      goOn(() => performance.now() < end);
    }, PAUSE_MS);
  };
  wait();
}
