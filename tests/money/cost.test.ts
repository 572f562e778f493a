import { describe, expect, it } from 'vitest';
import { type CostInput, estimateCost } from '../../kernel-helpers/src/money/cost.js';

const input: CostInput = {
  currency: 'USD',
  boards: [{ mark: 'A', thickness: 1, width: 6, length: 96, price: 14.5 }],
  otherMaterials: [{ what: 'Finish', price: 6 }],
  hours: 10,
  hourlyRate: 40,
  overheadPerYear: 12000,
  billableHoursPerYear: 1000,
  contingency: 0.05,
};

describe('cost', () => {
  it('worked by hand', () => {
    const cost = estimateCost(input);
    // 4 bd ft x 14.50 = 58.00; 6.00; 10 x 40 = 400.00; 10 x 12 = 120.00; 5 % of 584 = 29.20
    expect(cost.lines.map(({ amount }) => amount.minor)).toEqual([5800, 600, 40000, 12000, 2920]);
    expect(cost.total.minor).toBe(61320);
  });

  it('worked by hand, with a knob turned by someone else and a carton', () => {
    const cost = estimateCost({ ...input, outsideWork: [{ what: 'Knob, turned', price: 18 }], packing: 8 });
    // 584 + 18 + 8 = 610; 5 % is 30.50
    expect(cost.total.minor).toBe(64050);
    expect(cost.lines.find(({ what }) => what === 'Knob, turned')).toMatchObject({ how: 'outside work' });
  });

  it.each([
    [{ hours: -1 }, 'hours: -1 given; possible: a number from 0 to 5000 h'],
    [{ billableHoursPerYear: 0 }, 'billableHoursPerYear: 0 given'],
    [{ contingency: 5 }, 'contingency: 5 given; possible: a number from 0 to 1 (a fraction: 5 % is 0.05)'],
    [{ hourlyRate: Number.NaN }, 'hourlyRate: null given'],
    [{ currency: 'bucks' }, 'currency: "bucks" given'],
    [{ packing: -2 }, 'packing: -2 given'],
    [
      { otherMaterials: [{ what: 'Hinges', price: 30, currency: 'EUR' }] },
      'Hinges: 30 EUR given; possible: USD, the currency of the whole estimate',
    ],
    [{ outsideWork: [{ what: 'Knob', price: -4 }] }, 'outsideWork no. 1, price: -4 given'],
  ])('refuses %j in one line', (bad, message) => {
    expect(() => estimateCost({ ...input, ...bad })).toThrow(message);
  });
});
