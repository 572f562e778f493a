import { describe, expect, test } from 'vitest';
import { allFinishes } from '../../../kernel-helpers/src/surface/finish/finishes.js';
import { planFinishing } from '../../../kernel-helpers/src/surface/finish/finishing.js';
import { planGluing } from '../../../kernel-helpers/src/surface/finish/gluing.js';
import { planSanding } from '../../../kernel-helpers/src/surface/finish/sanding.js';
import { surfaceAreas } from '../../../kernel-helpers/src/surface/finish/surface-areas.js';
import { orderOfWork } from '../../../kernel-helpers/src/surface/order-of-work.js';
import { allMoistureExcluding } from '../../../kernel-helpers/src/wood/drying/moisture-excluding.js';
import { chest } from '../lettering/shapes.js';

const areas = surfaceAreas(chest);
const plan = (more: Partial<Parameters<typeof planFinishing>[0]> = {}) =>
  planFinishing({ areas, finish: 'oil-wax', temperatureC: 20, ...more });
const verdict = (finishing: ReturnType<typeof plan>, rule: string) =>
  finishing.findings.find((each) => each.rule === rule)?.verdict;

describe('a finish', () => {
  test('an oil-wax is wiped off after about 15 minutes, and its rags are a watch', () => {
    expect(plan().finish.wipeOffMinutes).toBe(15);
    expect(verdict(plan(), 'rags')).toBe('watch');
    expect(verdict(plan({ finish: 'shellac' }), 'rags')).toBe('ok');
  });

  test('amount: a quart a coat where the area is the coverage', () => {
    const one = [{ face: 'lid, top', area: 144 * 150, sanded: 'before assembly', inside: false }] as const;
    expect(plan({ areas: one, coats: 2 }).millilitres).toBeCloseTo(2 * 946.352946, 6);
  });

  test('the inside counts only where it is asked for', () => {
    expect(plan({ inside: true }).squareFeet).toBeGreaterThan(plan().squareFeet);
  });

  test('says what the published test found, and where nothing is published says nothing', () => {
    expect(plan({ finish: 'linseed-oil', coats: 3 }).keepsOut).toMatchObject({ coats: 3, day1: 33, day14: 0 });
    expect(plan().keepsOut).toBeUndefined();
  });

  test('another finish than the lid was fitted for is a watch', () => {
    const rule = 'the finish that the lid was fitted for';
    expect(verdict(plan({ finish: 'shellac', coats: 2, planned: 'shellac-2-coats' }), rule)).toBe('ok');
    expect(verdict(plan({ finish: 'shellac', coats: 3, planned: 'shellac-2-coats' }), rule)).toBe('watch');
    expect(verdict(plan({ planned: 'shellac-2-coats' }), rule)).toBe('watch');
    expect(verdict(plan({ finish: 'shellac', planned: '' }), rule)).toBe('watch');
    // Nothing is published for an oil-wax: bare wood is the safe side.
    expect(verdict(plan({ planned: '' }), rule)).toBe('ok');
  });

  test('a cold shop is a watch', () => {
    expect(verdict(plan({ temperatureC: 8 }), 'warmth for the finish')).toBe('watch');
  });

  test('refuses a finish that is none, and half a coat', () => {
    expect(() => plan({ finish: 'oil-waxy' })).toThrow('finish: "oil-waxy" given; nearest: ');
    expect(() => plan({ coats: 1.5 })).toThrow('coats: 1.5 given; possible: a whole number');
  });
});

test('every finish that names a published test is in it', () => {
  const ids = allMoistureExcluding().map(({ id }) => id);
  for (const { moistureExcluding } of allFinishes())
    if (moistureExcluding) expect(ids.some((id) => id.startsWith(`${moistureExcluding}-`))).toBe(true);
});

describe('the order of work', () => {
  const steps = orderOfWork({
    handle: 'scoop',
    sanding: planSanding({ box: chest, kept: ['P120', 'P180', 'P220'], from: 'P120', to: 'P220' }),
    gluing: planGluing({ glue: 'hide-liquid', joints: 4, minutesPerJoint: 1, temperatureC: 20, area: 10 }),
    finishing: plan({ coats: 2 }),
  });
  const place = (words: RegExp) => steps.findIndex(({ step }) => words.test(step));

  test('sands inside faces before glue, outside after, finish last', () => {
    const order = [
      place(/inside faces, both/),
      place(/^Glue up/),
      place(/^Sand the outside/),
      place(/coat 1/),
      place(/coat 2/),
    ];
    expect(order.every((at, i) => at >= 0 && at > (order[i - 1] ?? -1))).toBe(true);
  });

  test('waits for glue, between coats and for the last to cure', () => {
    expect(steps.filter(({ waitHours }) => waitHours > 0).map(({ waitHours }) => waitHours)).toEqual([24, 12, 24 * 21]);
  });

  test('leaves the handle out where there is none', () => {
    const gluing = planGluing({ glue: 'hide-liquid', joints: 4, minutesPerJoint: 1, temperatureC: 20, area: 10 });
    const plain = orderOfWork({ handle: 'none', sanding: { outside: [], inside: [] }, gluing, finishing: plan() });
    expect(plain.some(({ step }) => /scoop|none/.test(step))).toBe(false);
  });
});
