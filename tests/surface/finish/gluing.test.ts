import { describe, expect, test } from 'vitest';
import { allGlues, glue } from '../../../kernel-helpers/src/surface/finish/glues.js';
import { planGluing } from '../../../kernel-helpers/src/surface/finish/gluing.js';

const plan = (more: Partial<Parameters<typeof planGluing>[0]> = {}) =>
  planGluing({ glue: 'hide-liquid', joints: 4, minutesPerJoint: 1.5, temperatureC: 20, area: 100, ...more });
const verdict = (gluing: ReturnType<typeof plan>, rule: string) =>
  gluing.findings.find((each) => each.rule === rule)?.verdict;

describe('glue against the assembly', () => {
  test('its own time is joints times minutes and the rest', () => {
    expect(plan({ otherMinutes: 2 }).assemblyMinutes).toBe(8);
  });

  test('eight minutes are fine for liquid hide glue, late for yellow glue, too late for hot hide glue', () => {
    expect(verdict(plan(), 'open time of the glue')).toBe('ok');
    expect(verdict(plan({ glue: 'pva-yellow' }), 'open time of the glue')).toBe('watch');
    expect(verdict(plan({ glue: 'hide-hot', temperatureC: 25 }), 'open time of the glue')).toBe('stop');
  });

  test('open and closed time together are the end: white glue bears 5 and 5 minutes', () => {
    const white = (minutes: number) =>
      plan({ glue: 'pva-white', joints: 1, minutesPerJoint: minutes, otherMinutes: 0 });
    expect(verdict(white(3), 'open time of the glue')).toBe('ok');
    expect(verdict(white(10), 'open time of the glue')).toBe('watch');
    expect(verdict(white(10.1), 'open time of the glue')).toBe('stop');
  });

  test('a late glue-up names the types that would do', () => {
    const { findings } = plan({ glue: 'pva-white' });
    expect(findings[0]?.change).toContain('Liquid hide glue');
    expect(findings[0]?.change).not.toContain('Hot hide glue');
  });

  test('a cold shop is a stop', () => {
    expect(verdict(plan({ temperatureC: 8 }), 'warmth for the glue')).toBe('stop');
  });

  test('amount: a square metre at 220 g, 1.1 g to the millilitre, is 200 ml', () => {
    expect(plan({ area: 1 / 0.00064516, spread: 220 }).millilitres).toBeCloseTo(200, 9);
  });

  test('refuses a glue that is none and a joint count that is none', () => {
    expect(() => plan({ glue: 'hide-cold' })).toThrow('glue: "hide-cold" given; nearest: hide-hot, hide-liquid');
    expect(() => plan({ joints: 0 })).toThrow('joints: 0 given; possible: a number from 1 to 500');
  });
});

test('the magazine table: white 5 minutes open and 1 hour clamped, yellow 5 and 30, liquid hide 10 and 12 hours, powder 20 and 12 hours', () => {
  // A woodworking magazine's table of generic glue types (read); a second magazine gives 3 to 5 and 5 to 6 minutes open.
  const row = (id: string) => [glue(id).openMinutes[0] <= 5, glue(id).openMinutes, glue(id).clampMinutes];
  expect(row('pva-white')).toEqual([true, [3, 5], 60]);
  expect(row('pva-yellow')).toEqual([true, [5, 6], 30]);
  expect(row('hide-liquid')).toEqual([false, [10, 10], 720]);
  expect(row('urea-powder')).toEqual([false, [20, 20], 720]);
});

test('every type says where it comes from and what is remembered of it', () => {
  for (const { source, valuesFromMemory, fromMemory } of allGlues()) {
    expect(source.length).toBeGreaterThan(10);
    expect(valuesFromMemory.length > 0).toBe(fromMemory);
  }
});
