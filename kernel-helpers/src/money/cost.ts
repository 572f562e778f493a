import * as z from 'zod';
import { evaluate, type Formula } from '../measure/formula.js';
import { amount, readParameters, words } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { boardFeet } from '../stock/boards/board-feet.js';
import type { Board } from '../stock/boards/boards.js';
import { addMoney, type Money, money, shareOfMoney } from './money.js';

/** What a piece costs the shop, line by line. */
export interface Cost {
  lines: { what: string; how: string; amount: Money }[];
  total: Money;
  /** Overhead for each hour of work, currency units. */
  overheadPerHour: number;
}

/** Something bought, in whole currency units; its currency only where the bill has another. */
export interface Bought {
  what: string;
  price: number;
  currency?: string;
}

/** What goes into a cost; money in whole currency units. */
export interface CostInput {
  currency: string;
  /** Boards bought: all of each, not just what ends up in the piece. */
  boards: Board[];
  /** Plywood, hardware, glue, abrasives, finish. */
  otherMaterials: Bought[];
  /** Work that others do: a turned knob, a key cut, delivery. */
  outsideWork?: Bought[];
  /** Carton and padding. */
  packing?: number;
  hours: number;
  /** Pay for an hour of work. */
  hourlyRate: number;
  /** Rent, power, insurance, machines: a year of it. */
  overheadPerYear: number;
  /** Hours in a year that some client pays for. */
  billableHoursPerYear: number;
  /** Added for what goes wrong, a fraction of everything else. */
  contingency: number;
}

/** Overhead that each billable hour must carry. */
export const overheadFormula: Formula<'O' | 'H'> = {
  name: 'Overhead for an hour',
  result: { tex: 'o', meaning: 'overhead for an hour of work', unit: '' },
  expression: 'O / H',
  symbols: {
    O: { meaning: 'overhead of a year', unit: '', min: 0 },
    H: { meaning: 'billable hours in a year', unit: 'h', min: 1 },
  },
  source: 'common practice, no source',
};

const price = (why: string) => amount({ least: 0, most: 1e7, why });

const boughtFields = z.strictObject({
  what: words('what it is'),
  price: price('what it costs'),
  currency: z.string({ error: 'possible: a code of ISO 4217 such as USD' }).optional(),
});

const costFields = z.object({
  otherMaterials: z.array(boughtFields),
  outsideWork: z.array(boughtFields).default([]),
  packing: price('carton and padding').default(0),
  hours: amount({ least: 0, most: 5000, unit: 'h', why: 'hours of work' }),
  hourlyRate: price('pay for an hour'),
  overheadPerYear: price('overhead of a year'),
  billableHoursPerYear: amount({ least: 1, most: 8760, unit: 'h', why: 'hours a year that clients pay for' }),
  contingency: amount({ least: 0, most: 1, why: 'a fraction: 5 % is 0.05' }),
});

/**
 * What a piece costs the shop: boards bought, other materials, outside work, packing, labour, overhead, contingency.
 *
 * @returns lines and their exact sum
 * @throws ShopError  one line: the field, the value given, what is possible, why; a bill in another currency
 * @see common practice, no source
 */
export function estimateCost(input: CostInput): Cost {
  const { currency, boards } = input;
  const read = readParameters(costFields, { ...input });
  const { packing, hours, hourlyRate, overheadPerYear, billableHoursPerYear, contingency } = read;
  const overheadPerHour = evaluate(overheadFormula, { O: overheadPerYear, H: billableHoursPerYear });
  const lines = [
    ...boards.map((board) => ({
      what: `Board ${board.mark}`,
      how: `${boardFeet(board).toFixed(2)} bd ft at ${board.price}`,
      amount: money(boardFeet(board) * board.price, currency),
    })),
    ...read.otherMaterials.map((bill) => billed(bill, 'bought', currency)),
    ...read.outsideWork.map((bill) => billed(bill, 'outside work', currency)),
    ...(packing > 0 ? [{ what: 'Packing', how: 'bought', amount: money(packing, currency) }] : []),
    { what: 'Labour', how: `${hours.toFixed(1)} h at ${hourlyRate}`, amount: money(hours * hourlyRate, currency) },
    {
      what: 'Shop overhead',
      how: `${hours.toFixed(1)} h at ${overheadPerHour.toFixed(2)}`,
      amount: money(hours * overheadPerHour, currency),
    },
  ];
  const sum = addMoney(lines.map((line) => line.amount));
  const reserve = shareOfMoney(sum, contingency);
  lines.push({ what: 'Contingency', how: `${(100 * contingency).toFixed(0)} % of the above`, amount: reserve });
  return { lines, total: addMoney([sum, reserve]), overheadPerHour };
}

function billed(bill: Bought, how: string, currency: string) {
  if (bill.currency !== undefined && bill.currency !== currency)
    throw new ShopError(
      `${bill.what}: ${bill.price} ${bill.currency} given; possible: ${currency}, the currency of the whole estimate (change it at the day's rate first, and note the rate)`,
    );
  return { what: bill.what, how, amount: money(bill.price, currency) };
}
