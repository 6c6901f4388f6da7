/** Leaves for another page as a whole, so that everything the desk keeps is kept first. */
export function goTo(address: string): void {
  window.location.assign(address);
}
