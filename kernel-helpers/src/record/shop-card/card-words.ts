import { differences } from '../chain/differences.js';
import type { ShopCard } from './shop-card.js';

/** A field's value as a maker would write it: `1/8 in`, `P80, P100`, `(least length 12 in, widest 8 in)`. */
export function cardWords(value: unknown): string {
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(cardWords).join(', ');
  if (typeof value === 'object' && value !== null)
    return `(${Object.entries(value)
      .map(([field, each]) => `${fieldWords(field)} ${cardWords(each)}`)
      .join(', ')})`;
  if (value === '') return 'none';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}

/** Fields whose names say less, or more, than the maker would. */
const called: Record<string, string> = { shopTemperatureC: '°C', shopHumidity: 'humidity', air: 'air of the shop' };

/** A field's name in words: `hand saw kerf`. */
export function fieldWords(field: string): string {
  return called[field] ?? field.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** One field of a card before and after a change, in words. */
export interface CardMove {
  field: string;
  before: string;
  now: string;
}

/** What differs between two cards, in the order of their fields. */
export function cardMoves(before: ShopCard, now: ShopCard): CardMove[] {
  return (Object.keys(now) as (keyof ShopCard)[])
    .filter((field) => differences(before[field], now[field], field).length > 0)
    .map((field) => ({ field: fieldWords(field), before: cardWords(before[field]), now: cardWords(now[field]) }));
}
