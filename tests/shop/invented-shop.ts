import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { randomNormal } from 'd3-random';
import { estimateHours, type HoursEstimate } from '../../kernel-helpers/src/money/hours.js';
import { money } from '../../kernel-helpers/src/money/money.js';
import { allOperations, type Counts } from '../../kernel-helpers/src/money/operations.js';
import type { Joint } from '../../kernel-helpers/src/piece/brief.js';
import { nextLine } from '../../kernel-helpers/src/record/chain/chain.js';
import type { EntryContent, Head, Versions } from '../../kernel-helpers/src/record/chain/entry.js';
import { sha256 } from '../../kernel-helpers/src/record/chain/sha256.js';
import type { Decisions } from '../../kernel-helpers/src/record/decisions/decisions.js';

/** What is true of an invented shop, for tests to find again. */
export interface InventedTruth {
  /** What each operation's mean time really is, of its estimate. */
  factors: Record<string, number>;
  /** Scatter of the logarithm from piece to piece. */
  scatter: number;
  /** Chance that a client accepts. */
  wins: number;
  /** Rise of the price for an hour, of itself, a year. */
  rise: number;
}

const versions: Versions = { node: '20.19.0', helpers: '0.1.0', build: 'invented', data: {} };
const woods = ['walnut-black', 'cherry-black', 'maple-sugar', 'oak-white', 'ash-white'];
const pieces = ['Tea chest', 'Pencil box', 'Letter box', 'Jewel box', 'Tool chest', 'Recipe box'];
const joints = ['through dovetail', 'finger joint'] as const;

/** Days after the beginning, and what was decided then. */
type Invented = { [What in keyof Decisions]: [number, What, Decisions[What]] }[keyof Decisions];

/**
 * INVENTED commissions of a shop that never was, for tests and measuring only: each a folder with a record in good form, of
 * the decisions that a shop book reads. Nothing here is anybody's figure.
 *
 * @param commissions  the folder they are made in
 * @param shop.seed  the same seed makes the same shop
 */
export function inventShop(
  commissions: string,
  { count, seed = 1, truth = {} }: { count: number; seed?: number; truth?: Partial<InventedTruth> },
): InventedTruth {
  const chance = mixed(seed);
  const normal = randomNormal.source(chance)(0, 1);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
  const factors = Object.fromEntries(allOperations().map(({ id }) => [id, Math.exp(0.3 * normal())]));
  const { scatter = 0.25, wins = 0.6, rise = 0.04 } = truth;
  const shop: InventedTruth = { factors: { ...factors, ...truth.factors }, scatter, wins, rise };

  for (let i = 0; i < count; i++) {
    const begun = new Date(Date.UTC(2016, 0, 4) + Math.floor((i * 10 * 365.25) / count) * 86_400_000);
    const day = (after: number) => new Date(begun.getTime() + after * 86_400_000).toISOString().slice(0, 10);
    const piece = pick(pieces);
    const letters = Math.floor(10 * chance());
    const tail = 4 * (2 + Math.floor(4 * chance()));
    const faces = 1.5 + 3 * chance();
    const counts: Counts = {
      ...{ piece: 1, part: 6, corner: 4, tail, groove: 7, lid: 1, letter: letters },
      ...{ board: 2, finger: 0, mitre: 0, key: 0, rabbet: 0, 'carving minute': 0, tenon: 0, 'edge joint': 0 },
      ...{ 'solid part': 5, coat: 3 },
      ...{ 'graded square foot before assembly': 4 * faces, 'graded square foot after assembly': 4 * faces },
      'square foot coated': 3 * faces,
    };
    const hours = estimateHours({ counts, simulations: 100 });
    const perHour = 60 * (1 + rise) ** (i * (10 / count)) * Math.exp(0.08 * normal());
    const made: Invented[] = [
      [0, 'brief', inventedBrief(piece, pick(woods), pick(joints), i, day(90))],
      [2, 'lid', inventedLid],
      [3, 'stock', { ...inventedStock, yield: 0.25 + 0.15 * chance() }],
      [4, 'quote', inventedQuote(hours, counts, perHour, day(34))],
    ];
    const answered = chance();
    const accepted = answered < 0.95 && chance() < wins;
    if (answered < 0.95) {
      made.push([9, 'answer', { answer: accepted ? 'accepted' : 'declined', date: day(9), reason: '' }]);
    }
    if (accepted && chance() < 0.9) {
      made.push([60, 'actuals', inventedActuals(hours, shop, normal, day(60), 0.25 + 0.15 * chance())]);
      const measurements = Array.from({ length: Math.floor(3 * chance()) }, (_, season) => {
        const date = day(200 + 180 * season);
        const { clearance, high } = lidYear[Number(date.slice(5, 7)) - 1] as (typeof lidYear)[0];
        return { date, clearance: Math.max(0, clearance + ((high - clearance) / 1.645) * normal()) };
      });
      if (measurements.length > 0) made.push([400, 'measured', { measurements }]);
    }
    writeRecord(
      join(commissions, `${day(0)}-${piece.toLowerCase().replace(' ', '-')}-${String(i).padStart(5, '0')}`),
      made.map(([after, what, results]) => ({
        ...{ at: `${day(after)}T10:00:00Z`, who: 'invented', what, needs: {}, inputs: {}, results },
        ...{ findings: [], overrides: {}, versions },
      })),
    );
  }
  return shop;
}

/**
 * Numbers from 0 to 1. A linear congruential generator will not do here: every piece draws about as many numbers as the one before,
 * and its draws at such a stride hang together.
 *
 * @see mulberry32, T. Ettinger 2017, public domain (from memory)
 */
function mixed(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mix = Math.imul(state ^ (state >>> 15), 1 | state);
    mix = (mix + Math.imul(mix ^ (mix >>> 7), 61 | mix)) ^ mix;
    return ((mix ^ (mix >>> 14)) >>> 0) / 2 ** 32;
  };
}

const lidYear = Array.from({ length: 12 }, (_, i) => {
  const clearance = 0.07 + 0.05 * Math.cos((2 * Math.PI * i) / 12);
  return { month: i + 1, moisture: 8, clearance, low: clearance - 0.01, high: clearance + 0.01, tongueRoom: 0.01 };
});

const inventedLid: Decisions['lid'] = {
  ...{ fittedWidth: 6.65, fittedTongue: 0.24, opening: 6.75, window: { narrowest: 6.57, widest: 6.67 } },
  ...{ limits: { leastClearance: 0.01, mostClearance: 0.22 }, fittingMoisture: 8, wettest: 7, driest: 1 },
  byMonth: lidYear,
};

const inventedStock: Decisions['stock'] = {
  boards: [{ mark: 'A', thickness: 1, width: 7, length: 70, price: 14 }],
  plan: { boards: [], cost: 0, yield: 0, bound: 0, proven: false, bounds: 'no plan' },
  ...{ sheets: [], offcuts: [], rough: [], toCut: { parts: [], blanks: [], partOf: {} } },
  ...{ bought: 3.4, steps: [], yield: 0, milled: [], snipe: [] },
};

function inventedBrief(piece: string, species: string, joint: Joint, i: number, promised: string): Decisions['brief'] {
  return {
    ...{ client: `Invented client ${i}`, piece, promised, insideLength: 9.5, insideWidth: 6.25, insideDepth: 4 },
    ...{ species, joint, personal: 'plain', home: 'chicago-ohare', units: 'both' },
  };
}

function inventedQuote(hours: HoursEstimate, counts: Counts, perHour: number, validUntil: string): Decisions['quote'] {
  const price = money(Math.round(hours.mean * perHour), 'USD');
  const deposit = { ...price, minor: Math.round(price.minor / 2) };
  return {
    hours,
    counts,
    cost: { lines: [], total: { ...price, minor: Math.round(price.minor * 0.8) }, overheadPerHour: 12 },
    quote: {
      ...{ price, net: price, tax: { name: 'Tax', rate: 0, amount: { ...price, minor: 0 } } },
      ...{ deposit, balance: { ...price, minor: price.minor - deposit.minor } },
      ...{ margin: 0.2, markup: 0.25, validUntil },
    },
  };
}

function inventedActuals(
  hours: HoursEstimate,
  { factors, scatter }: InventedTruth,
  normal: () => number,
  finished: string,
  yielded: number,
): Decisions['actuals'] {
  const operations = hours.byOperation.map(({ id, name, mean, deviation }) => {
    const ratio = (factors[id] as number) * Math.exp(scatter * normal() - scatter ** 2 / 2);
    return { id, name, estimated: mean, deviation, actual: Math.round(60 * mean * ratio) / 60 };
  });
  const sum = (of: (each: (typeof operations)[0]) => number) => operations.reduce((total, each) => total + of(each), 0);
  return {
    ...{
      finished,
      operations,
      untimed: [],
      estimated: sum((each) => each.estimated),
      actual: sum((each) => each.actual),
    },
    ...{ boardFeet: 3.4, yield: yielded, changes: [], why: {}, learned: '' },
  };
}

function writeRecord(folder: string, contents: EntryContent[]): void {
  let head: Head | undefined;
  const lines = contents.map((content) => {
    const line = nextLine(head, content);
    head = { seq: (head?.seq ?? 0) + 1, hash: sha256(line) };
    return Buffer.concat([line, Buffer.from('\n')]);
  });
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'record.jsonl'), Buffer.concat(lines));
}
