import { refusal } from './shop-error.js';

/** The days a commission has seen so far, as ISO days. */
export interface SoFar {
  /** The day it was begun; empty where that is not known, and then no day is too early. */
  begun: string;
  /** Nothing has happened after it yet. */
  today: string;
}

/**
 * Refuses a day on which something is said to have happened, but cannot have.
 *
 * @param path  where the day was typed: `['worked', 0, 'date']`
 * @param date  ISO day
 * @throws ShopError  a day before the commission was begun, or one still to come
 * @internal
 */
export function refuseOutside(path: readonly PropertyKey[], date: string, { begun, today }: SoFar): void {
  const refuse = (possible: string) => refusal({ path, given: date, possible: `possible: ${possible}` });
  if (date < begun) throw refuse(`from ${begun}, when the commission was begun`);
  if (date > today) throw refuse(`to ${today}, today (what is still to come is no record)`);
}
