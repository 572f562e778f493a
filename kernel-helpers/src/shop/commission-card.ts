import type { Actuals, ClientAnswer } from '../money/actuals.js';
import type { Money } from '../money/money.js';
import type { Brief, Joint } from '../piece/brief.js';
import type { Entry, Head } from '../record/chain/entry.js';
import { schemaProblem } from '../record/decision.js';
import { decisionSchemas } from '../record/decisions/decision-schemas.js';
import type { Decisions } from '../record/decisions/decisions.js';
import { latest, staleness, standing as standingEntries } from '../record/stale.js';

/** A measured lid beside what was predicted for that month; in. */
export interface LidInSeason {
  date: string;
  clearance: number;
  predicted: number;
  /** The band that nine boards in ten lie in. */
  low: number;
  high: number;
}

/** Hours of one operation, estimated and taken. */
export interface OperationTimed {
  id: string;
  estimated: number;
  actual: number;
}

/** What the shop book keeps of one commission. */
export interface CommissionCard {
  /** The folder's name, `2026-03-12-tea-chest`. */
  name: string;
  /** ISO day it was begun. */
  date: string;
  /** Fingerprint of its first entry: copies of one commission share it. */
  first: string;
  /** Where its record ends. */
  head: Head;
  piece?: string;
  client?: string;
  species?: string;
  joint?: Joint;
  /** Inside: length, width, depth, in. */
  inside?: [number, number, number];
  /** ISO day it is promised for. */
  promised?: string;
  quoted?: { date: string; price: Money; hours: number };
  answer?: ClientAnswer['answer'];
  /** What it took, when it was closed. */
  worked?: { finished: string; estimated: number; actual: number; operations: OperationTimed[] };
  /** Part of the boards that is in the piece: as it came out when it was closed, else as planned. */
  yield?: number;
  lids: LidInSeason[];
  /** Rules that ask to watch something, of a commission that is not closed. */
  watches: string[];
  /** Decisions that rest on one that has changed since. */
  behind: string[];
}

/**
 * A commission's card for the shop book, from its record. A decision that is not of the shape these helpers know, of an older
 * daybook, is left out.
 *
 * @param name  the folder's name
 * @param entries  of a sound record, at least one
 * @internal
 */
export function commissionCard(name: string, entries: readonly Entry[]): CommissionCard {
  const [first, last] = [entries[0] as Entry, entries.at(-1) as Entry];
  const brief = standing(entries, 'brief');
  const quote = standing(entries, 'quote');
  const actuals = standing(entries, 'actuals');
  const answer = standing(entries, 'answer');
  return {
    name,
    date: /^\d{4}-\d\d-\d\d/.exec(name)?.[0] ?? first.at.slice(0, 10),
    first: first.hash,
    head: { seq: last.seq, hash: last.hash },
    ...(brief && briefPart(brief)),
    ...(quote && {
      quoted: {
        date: latest(entries, 'quote')?.at.slice(0, 10) as string,
        price: quote.quote.price,
        hours: quote.hours.mean,
      },
    }),
    // Nobody builds what the client declined.
    answer: answer?.answer ?? (actuals && 'accepted'),
    worked: actuals && workedPart(actuals),
    yield: actuals?.yield ?? standing(entries, 'stock')?.yield,
    lids: lidsInSeason(entries),
    watches: actuals ? [] : watches(entries),
    behind: standingEntries(entries).flatMap((entry) => staleness(entries, entry)?.what ?? []),
  };
}

function standing<What extends keyof Decisions>(
  entries: readonly Entry[],
  what: What,
): Readonly<Decisions[What]> | undefined {
  const results = latest(entries, what)?.results;
  if (results === undefined || schemaProblem(decisionSchemas[what], results, what)) return undefined;
  return results as Decisions[What];
}

function watches(entries: readonly Entry[]): string[] {
  const findings = standingEntries(entries).flatMap((entry) => entry.findings);
  return [...new Set(findings.filter(({ verdict }) => verdict === 'watch').map(({ rule }) => rule))];
}

function briefPart(brief: Brief) {
  const { piece, client, promised, species, joint, insideLength, insideWidth, insideDepth } = brief;
  const inside: [number, number, number] | undefined =
    insideLength && insideWidth && insideDepth ? [insideLength, insideWidth, insideDepth] : undefined;
  return { piece, client, promised, species, joint, inside };
}

function workedPart({ finished, estimated, actual, operations }: Actuals) {
  // A millionth of an hour is enough, and the index of ten thousand commissions is read in a moment only when it is short.
  const short = (hours: number) => Math.round(hours * 1e6) / 1e6;
  return {
    finished,
    estimated,
    actual,
    operations: operations.map(({ id, estimated, actual }) => ({
      id,
      estimated: short(estimated),
      actual: short(actual),
    })),
  };
}

function lidsInSeason(entries: readonly Entry[]): LidInSeason[] {
  const lid = standing(entries, 'lid');
  const measured = standing(entries, 'measured');
  if (!lid || !measured) return [];
  return measured.measurements.flatMap(({ date, clearance }) => {
    const month = lid.byMonth.find((each) => each.month === Number(date.slice(5, 7)));
    return month ? [{ date, clearance, predicted: month.clearance, low: month.low, high: month.high }] : [];
  });
}
