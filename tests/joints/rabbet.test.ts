import { describe, expect, it } from 'vitest';
import { layOutRabbet } from '../../kernel-helpers/src/joints/rabbet.js';

const usual = { boardWidth: '5 in', stockThickness: '1/2 in' };
type Input = Parameters<typeof layOutRabbet>[0];

describe('a rabbet worked by hand', () => {
  it('1/2 in stock, 5/16 deep, 1/16 proud, cut with 3/8', () => {
    const joint = layOutRabbet({ ...usual, rabbetDepth: '5/16 in', proud: '1/16 in', cutter: '3/8 in' });
    expect(joint.rabbetWidth).toBe(9 / 16); // 1/2 + 1/16
    expect(joint.lip).toBe(3 / 16); // 1/2 - 5/16
    expect(joint.lengthAdded).toBe(5 / 8); // 2 x 5/16
    expect(joint.glueArea).toEqual({ floor: 2.5, shoulder: 25 / 16 }); // 1/2 x 5; 5/16 x 5
    expect(joint.setUp).toMatchObject({ fence: 9 / 16, height: 5 / 16, passes: 2, offsets: [0, 3 / 16] });
  });

  it('takes half the stock, and a cutter wider than the rabbet in one pass', () => {
    expect(layOutRabbet({ ...usual, cutter: '1 in' })).toMatchObject({ rabbetDepth: 1 / 4, setUp: { passes: 1 } });
  });
});

it.each<[Partial<Input>, string, string]>([
  [{}, 'rabbet half to two thirds of the stock', 'ok'],
  [{ rabbetDepth: 0.2 }, 'rabbet half to two thirds of the stock', 'watch'],
  [{ rabbetDepth: '1/8 in' }, 'rabbet half to two thirds of the stock', 'watch'],
  [{ stockThickness: '3/4 in', rabbetDepth: '1/2 in' }, 'rabbet half to two thirds of the stock', 'ok'],
  [{ rabbetDepth: '23/64 in' }, 'rabbet half to two thirds of the stock', 'watch'],
  [{ rabbetDepth: '7/16 in' }, 'lip over the end', 'watch'],
  [{ rabbetDepth: '3/8 in' }, 'lip over the end', 'ok'], // 1/8 left
  [{ rabbetDepth: 0.38 }, 'lip over the end', 'watch'],
  [{}, 'held by more than glue', 'watch'],
])('%j: %s is %s', (change, rule, verdict) => {
  expect(layOutRabbet({ ...usual, ...change }).findings.find((finding) => finding.rule === rule)?.verdict).toBe(
    verdict,
  );
});

it.each<[Partial<Input>, string]>([
  [{ rabbetDepth: '1/2 in' }, 'rabbetDepth: 1/2 in (12.7 mm) given; possible: less than 1/2 in (12.7 mm)'],
  [{ stockThickness: 0 }, 'stockThickness: 0 given; possible: 1/8 in to 3 in'],
])('%j is refused in one line', (bad, message) => {
  expect(() => layOutRabbet({ ...usual, ...bad })).toThrow(message);
});
