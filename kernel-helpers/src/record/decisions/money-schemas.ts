import * as z from 'zod';
import { countsOfAll } from '../../money/operations.js';
import { money, nonNegative } from './values.js';

const hours = { mean: nonNegative, deviation: nonNegative };
const operation = z.looseObject({
  ...hours,
  id: z.string(),
  name: z.string(),
  count: nonNegative,
  per: z.string(),
  minutes: z.tuple([nonNegative, nonNegative, nonNegative]),
});

const since = nonNegative.optional();
const countsSince = {
  ...{ 'foot of board': since, 'foot of groove': since, 'square foot coated': since, 'square foot packed': since },
  ...{ 'graded square foot before assembly': since, 'graded square foot after assembly': since },
  ...{ panel: since, 'square foot by hand': since },
};

/** @internal */
export const quote = z.looseObject({
  hours: z.looseObject({
    ...hours,
    low: nonNegative,
    high: nonNegative,
    p50: nonNegative,
    p80: nonNegative,
    p95: nonNegative,
    pace: nonNegative.optional(),
    byOperation: z.array(operation).optional(),
  }),
  counts: z.looseRecord(z.enum(countsOfAll), nonNegative).and(z.looseObject(countsSince)),
  cost: z.looseObject({
    lines: z.array(z.looseObject({ what: z.string(), how: z.string(), amount: money })),
    total: money,
    overheadPerHour: nonNegative,
  }),
  quote: z.looseObject({
    price: money,
    net: money,
    tax: z.looseObject({ name: z.string(), rate: nonNegative, amount: money }),
    margin: z.number(),
    markup: z.number(),
    deposit: money,
    balance: money,
    validUntil: z.iso.date(),
  }),
});

/** @internal */
export const answer = z.looseObject({
  answer: z.enum(['accepted', 'declined']),
  date: z.iso.date(),
  reason: z.string(),
});

/** @internal */
export const actuals = z.looseObject({
  finished: z.iso.date(),
  operations: z.array(
    z.looseObject({
      id: z.string(),
      name: z.string(),
      estimated: nonNegative,
      deviation: nonNegative,
      actual: nonNegative,
    }),
  ),
  untimed: z.array(z.string()),
  estimated: nonNegative,
  actual: nonNegative,
  boardFeet: nonNegative,
  yield: nonNegative,
  changes: z.array(z.looseObject({ date: z.iso.date(), what: z.string() })),
  why: z.record(z.string(), z.string()),
  learned: z.string(),
});
