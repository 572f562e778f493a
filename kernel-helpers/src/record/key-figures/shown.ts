import { caliperScale, formatLength } from '../../measure/length.js';
import { formatMoney, money } from '../../money/money.js';
import type { Brief } from '../../piece/brief.js';
import type { Entry } from '../chain/entry.js';
import type { Decisions } from '../decisions/decisions.js';

/** How a commission's figures are written: its lengths by the tape or in millimetres, its money. */
export interface Shown {
  units: 'tape' | 'mm';
  /** ISO 4217 code. */
  currency: string;
}

/**
 * How a commission's key figures are written, as its brief and its quote say; by the tape and in dollars before them.
 *
 * @param decisions  what was decided, the latest last
 */
export function shownBy(decisions: readonly Pick<Entry, 'what' | 'results'>[]): Shown {
  const last = (kind: string) => decisions.findLast(({ what }) => what === kind)?.results;
  const brief = last('brief') as Partial<Brief> | undefined;
  const offer = last('quote') as Partial<Decisions['quote']> | undefined;
  return {
    units: brief?.units === 'mm' ? 'mm' : 'tape',
    currency: offer?.quote?.price?.currency ?? 'USD',
  };
}

/** Lengths by the tape, to 1/64 in, or to 0.1 mm, the unit once at the end: `11 x 7 3/4 x 5 in`. @param sizes  in */
export function sizesText(sizes: readonly number[], { units }: Pick<Shown, 'units'>): string {
  const unit = units === 'mm' ? ' mm' : ' in';
  const texts = sizes.map((inches) => formatLength(inches, { system: units, denominator: 64 }).slice(0, -unit.length));
  return `${texts.join(' x ')}${unit}`;
}

/** What the caliper shows: `6.657 in`, `169.09 mm`. @param inches  in */
export function caliperText(inches: number, { units }: Pick<Shown, 'units'>): string {
  const { unit, decimals, perInch } = caliperScale(units);
  return `${(inches * perInch).toFixed(decimals)} ${unit}`;
}

/** An amount as it is written: `$75.04`. @param amount  in whole units of the currency */
export function amountText(amount: number, { currency }: Pick<Shown, 'currency'>): string {
  return formatMoney(money(amount, currency));
}
