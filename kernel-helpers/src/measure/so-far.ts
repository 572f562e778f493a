import { ShopError } from './shop-error.js';

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
 * @param field  where the day was typed
 * @param date  ISO day
 * @throws ShopError  a day before the commission was begun, or one still to come
 * @internal
 */
export function refuseOutside(field: string, date: string, { begun, today }: SoFar): void {
  const given = `${field}: "${date}" given`;
  if (date < begun) throw new ShopError(`${given}; possible: from ${begun}, when the commission was begun`);
  if (date > today) throw new ShopError(`${given}; possible: to ${today}, today (what is still to come is no record)`);
}
