import { type Climate, climate } from './climates.js';
import { standsFor } from './places.js';

/**
 * The home of a piece in words, and where its figures are from when they are another place's: `Denver, by the figures of Boulder,
 * Colorado (24 mi away)`.
 *
 * @param typed  as it was typed
 * @param home  as the brief has it: a place's id, or a place of the maker's own
 * @throws ShopError  an id that is in no list
 */
export function homeWords(typed: string, home: string | Climate): string {
  const place = climate(home);
  const away = standsFor(typed, place);
  return away ? `${typed.trim()}, by the figures of ${place.place} (${away})` : place.place;
}
