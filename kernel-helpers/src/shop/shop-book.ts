import { existsSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { ShopError } from '../measure/shop-error.js';
import { type Correction, corrections } from '../money/correction.js';
import { unitsOf } from '../money/money.js';
import { allOperations } from '../money/operations.js';
import { paceOf } from '../money/pace.js';
import { type Proportion, proportion } from '../money/proportion.js';
import { type LinearRegression, linearRegression } from '../money/regression.js';
import type { CommissionCard, LidInSeason } from './commission-card.js';
import { type CommissionProblem, shopIndex } from './shop-index.js';

/** The shop's experience, over all commissions. */
export interface ShopBook {
  /** The folder of commissions. */
  folder: string;
  /** Oldest first; each commission once. */
  commissions: CommissionCard[];
  /** Commissions that are not counted, and why: damaged records, copies. */
  problems: CommissionProblem[];
  /** Folders with nothing recorded yet. */
  empty: string[];
  /** What past pieces say of each operation's estimate. */
  corrections: Correction[];
  /** How far the pace of whole pieces scatters around their estimate, a part of it; the usual figure until some are closed. */
  pace: number;
  /** Quotes that were accepted, of those answered. */
  won?: Proportion;
  /** Measured lids that lay in the predicted band, of all measured: about nine in ten should. */
  lidsInBand?: Proportion;
  lids: (LidInSeason & { name: string })[];
  /** Asked for an hour of estimated work, by currency, oldest first; a trend when there are enough: units a year. */
  prices: { currency: string; asked: { name: string; date: string; perHour: number }[]; trend?: LinearRegression }[];
}

/**
 * Reads all commissions and sets estimates beside what came out.
 *
 * @param folder  the folder of commissions; when left out, `data/commissions` in this folder or the nearest above
 * @param options.last  corrections from the last so many pieces of each operation; from all unless told otherwise
 * @throws ShopError  when there is no such folder
 */
export function shopBook(folder?: string, options: { last?: number } = {}): ShopBook {
  const commissions = folder === undefined ? nearest(process.cwd()) : resolve(folder);
  const { cards, problems, empty } = shopIndex(commissions);
  const closed = cards
    .filter(({ worked }) => worked)
    .sort((a, b) => ((a.worked?.finished ?? '') < (b.worked?.finished ?? '') ? -1 : 1));
  const names = new Map<string, string>(allOperations().map(({ id, name }) => [id, name]));
  const times = closed.flatMap(({ worked }) =>
    (worked?.operations ?? []).map(({ id, estimated, actual }) => ({
      operation: id,
      name: names.get(id) ?? id,
      estimated,
      actual,
    })),
  );
  const answered = cards.filter(({ answer }) => answer);
  const lids = cards.flatMap(({ name, lids }) => lids.map((lid) => ({ name, ...lid })));
  return {
    folder: commissions,
    commissions: cards,
    problems,
    empty,
    corrections: corrections(times, options),
    pace: paceOf(closed.map(({ worked }) => ({ estimated: worked?.estimated ?? 0, actual: worked?.actual ?? 0 }))),
    won: proportion(answered.filter(({ answer }) => answer === 'accepted').length, answered.length),
    lidsInBand: proportion(
      lids.filter(({ clearance, low, high }) => clearance >= low && clearance <= high).length,
      lids.length,
    ),
    lids,
    prices: pricesThroughTime(cards),
  };
}

function pricesThroughTime(cards: readonly CommissionCard[]): ShopBook['prices'] {
  const byCurrency = new Map<string, { name: string; date: string; minor: number; hours: number }[]>();
  for (const { name, quoted } of cards) {
    if (!quoted || quoted.hours === 0) continue;
    const { date, hours, price } = quoted;
    const known = byCurrency.get(price.currency) ?? [];
    known.push({ name, date, minor: price.minor, hours });
    byCurrency.set(price.currency, known);
  }
  return [...byCurrency].map(([currency, quotes]) => {
    const unit = unitsOf({ minor: 1, currency });
    const asked = quotes
      .map(({ name, date, minor, hours }) => ({ name, date, perHour: (minor * unit) / hours }))
      .sort((a, b) => (a.date < b.date ? -1 : 1));
    return {
      currency,
      asked,
      trend: linearRegression(asked.map(({ date, perHour }) => ({ x: yearOf(date), y: perHour }))),
    };
  });
}

/** A day as a year with its fraction. @internal */
export function yearOf(date: string): number {
  return 1970 + Date.parse(date) / (365.2425 * 86_400_000);
}

function nearest(from: string): string {
  const commissions = join(from, 'data', 'commissions');
  if (existsSync(commissions)) return commissions;
  const above = dirname(from);
  if (above === from)
    throw new ShopError(
      'There is no folder data/commissions here or above: npm run new makes one, with a first commission in it.',
    );
  return nearest(above);
}
