import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutKeyedMitre } from '../../kernel-helpers/src/joints/keyed-mitre.js';

const usual = { boardWidth: '5 in', stockThickness: '1/2 in', keys: 3, keyDepth: '1/2 in' };
type Input = Parameters<typeof layOutKeyedMitre>[0];

describe('a keyed mitre worked by hand', () => {
  it('three keys of 1/8 on 5 in', () => {
    const joint = layOutKeyedMitre(usual);
    expect(joint.gap).toBe(37 / 32); // (5 - 3 x 1/8) / 4
    expect(joint.keys.map(({ from }) => from)).toEqual([37 / 32, 78 / 32, 119 / 32]);
    expect(joint.mitreFace).toBeCloseTo(Math.SQRT1_2, 9); // 1/2 x root 2
    expect(joint.keyBlank).toEqual({ longSide: 1, height: 0.5, thickness: 0.125 });
    expect(joint.glueArea.keys).toBe(1.5); // 3 keys, two faces, each a triangle of 1 by 1/2: 3 x 2 x 1/4
    expect(joint.glueArea.mitre).toBeCloseTo(5 * Math.SQRT1_2 - 3 * 0.5 * 0.125, 9);
    expect(joint.setUp).toMatchObject({ mitreAngle: 45, bladeHeight: 0.5, passes: 1, offsets: [0] });
  });

  it('goes two thirds into the mitre unless told otherwise', () => {
    expect(layOutKeyedMitre({ ...usual, keyDepth: undefined }).keyDepth).toBeCloseTo((2 / 3) * Math.SQRT1_2, 9);
  });

  it('keeps the edge that was asked for', () => {
    const joint = layOutKeyedMitre({ ...usual, edge: '1/2 in' });
    expect(joint.keys[0]?.from).toBe(0.5);
    expect(joint.keys.at(-1)?.to).toBe(4.5);
    expect(joint.gap).toBe((5 - 1 - 3 / 8) / 2);
  });

  it('one key stands in the middle, whatever edge was asked for', () => {
    for (const edge of [undefined, '1/2 in'])
      expect(layOutKeyedMitre({ ...usual, keys: 1, edge })).toMatchObject({
        keys: [{ from: 39 / 16, to: 41 / 16 }],
        gap: 39 / 16,
      });
  });

  it('lies the same from both edges, so that one fence setting serves two slots', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 32, max: 320 }).map((marks) => marks / 16),
        fc.integer({ min: 1, max: 6 }),
        (boardWidth, keys) => {
          const joint = layOutKeyedMitre({ ...usual, boardWidth, keys });
          joint.keys.forEach(({ from }, index) => {
            expect(boardWidth - (joint.keys[keys - 1 - index]?.to ?? 0)).toBeCloseTo(from, 9);
          });
        },
      ),
    );
  });
});

describe('findings', () => {
  it.each<[Partial<Input>, string, string]>([
    [{ keyDepth: '9/16 in' }, 'slot stays inside the corner', 'ok'],
    [{ keyDepth: '5/8 in' }, 'slot stays inside the corner', 'watch'],
    [{ keyDepth: '3/4 in' }, 'slot stays inside the corner', 'stop'],
    [{ keyDepth: '3/8 in' }, 'key reaches past the middle of the mitre', 'ok'],
    [{ keyDepth: '1/4 in' }, 'key reaches past the middle of the mitre', 'watch'],
    [{ keyThickness: '1/16 in' }, 'blade cuts the slot', 'stop'],
    [{ keyThickness: '1/4 in' }, 'blade cuts the slot', 'ok'],
    [{ edge: '1/8 in' }, 'wood beside the outer keys', 'ok'],
    [{ edge: '1/16 in' }, 'wood beside the outer keys', 'watch'],
  ])('%j: %s is %s', (change, rule, verdict) => {
    expect(layOutKeyedMitre({ ...usual, ...change }).findings.find((finding) => finding.rule === rule)?.verdict).toBe(
      verdict,
    );
  });
});

describe('bad input', () => {
  it.each<[Partial<Input>, string]>([
    [{ keys: 60 }, 'keys: 60 given; possible: 1 to 20 of 1/8 in (3.2 mm) on boards 5 in (127.0 mm) wide'],
    [{ edge: '2 1/2 in' }, 'edge: 2 1/2 in (63.5 mm) given; possible: less than 2 5/16 in (58.7 mm) with 3 keys'],
    [{ keys: 0 }, 'keys: 0 given; possible: one key or more'],
    [{ keyDepth: '-1/2' }, 'keyDepth: "-1/2" given; less than nothing'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => layOutKeyedMitre({ ...usual, ...bad })).toThrow(message);
  });
});
