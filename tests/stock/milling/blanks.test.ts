import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blanksOf } from '../../../kernel-helpers/src/stock/milling/blanks.js';

const part = (name: string, length: number, count = 1, width = 5, thickness = 0.625) => ({
  ...{ name, count, length, width, thickness: 1, called: '4/4' },
  finished: { length: length - 0.75, width: width - 0.25, thickness },
});

describe('pieces that are planed whole', () => {
  it('are the parts themselves where they are long enough', () => {
    const { parts, blanks } = blanksOf({ rough: [part('side', 20, 2)], leastLength: 12, kerf: 0.125 });
    expect(parts).toEqual([{ name: 'side', count: 2, length: 20, width: 5, thickness: 0.625 }]);
    expect(blanks.map(({ because }) => because)).toEqual(['part', 'part']);
  });

  it('hold short parts of one width and thickness in a row', () => {
    const { parts, blanks } = blanksOf({
      rough: [part('front', 8.5), part('back', 8.5)],
      leastLength: 12,
      kerf: 0.125,
    });
    expect(blanks).toEqual([
      { name: 'blank 1', parts: ['front', 'back'], length: 17.125, width: 5, thickness: 0.625, because: 'short' },
    ]);
    expect(parts.map(({ name, sequence }) => [name, sequence])).toEqual([
      ['front', 'blank 1'],
      ['back', 'blank 1'],
    ]);
  });

  it('leave a short part without companion as long as the planer asks for', () => {
    const { parts } = blanksOf({ rough: [part('plug', 4)], leastLength: 12, kerf: 0.125 });
    expect(parts).toEqual([{ name: 'plug', count: 1, length: 12, width: 5, thickness: 0.625 }]);
  });

  it('keep the figure in its order round the corners, in one strip as wide as the widest', () => {
    const { parts, blanks, partOf } = blanksOf({
      rough: [part('side', 11.75, 2), part('front', 8.5), part('back', 8.5, 1, 5.5), part('lid', 11, 1, 7, 0.5)],
      leastLength: 8,
      kerf: 0.125,
      sequences: [['side', 'front', 'side', 'back']],
    });
    const figure = parts.filter(({ sequence }) => sequence === 'blank 1');
    expect(figure.map(({ name, width }) => [name, width])).toEqual([
      ['side 1', 5.5],
      ['front', 5.5],
      ['side 2', 5.5],
      ['back', 5.5],
    ]);
    expect(partOf['side 2']).toBe('side');
    expect(blanks[0]).toMatchObject({ because: 'figure', length: 11.75 * 2 + 8.5 * 2 + 3 * 0.125 });
  });

  it.each([
    [['side', 'side', 'side'], 'sequences: "side" in side, side, side given; possible: side (2)'],
    [['door'], 'sequences: "door" in door given'],
    [['side', 'lid'], 'possible: parts of one thickness'],
  ])('refuse the sequence %j', (sequence, message) => {
    const rough = [part('side', 11.75, 2), part('lid', 11, 1, 7, 0.5)];
    expect(() => blanksOf({ rough, leastLength: 8, kerf: 0.125, sequences: [sequence] })).toThrow(message);
  });

  it('are refused at once where there are more parts than a plan takes', () => {
    expect(() => blanksOf({ rough: [part('slat', 5, 10_000)], leastLength: 12, kerf: 0.125 })).toThrow(
      'parts: 10,000 given; possible: at most 500 at a time',
    );
  });

  it('neither lose nor invent a part, and none is shorter than the planer allows', () => {
    const some = fc.record({
      length: fc.integer({ min: 2, max: 40 }),
      count: fc.integer({ min: 1, max: 5 }),
      width: fc.constantFrom(2, 3),
      thickness: fc.constantFrom(0.5, 0.625),
    });
    fc.assert(
      fc.property(fc.array(some, { minLength: 1, maxLength: 6 }), (list) => {
        const rough = list.map(({ length, count, width, thickness }, i) =>
          part(`p${i}`, length, count, width, thickness),
        );
        const { parts, blanks, partOf } = blanksOf({ rough, leastLength: 12, kerf: 0.125 });
        expect(new Set(parts.map(({ name }) => name)).size, 'each has a name of its own').toBe(parts.length);
        for (const { name, count } of rough) {
          const cut = parts.filter((each) => partOf[each.name] === name).reduce((sum, each) => sum + each.count, 0);
          expect(cut).toBe(count);
          expect(blanks.flatMap((blank) => blank.parts).filter((each) => partOf[each] === name)).toHaveLength(count);
        }
        for (const { length } of blanks) expect(length).toBeGreaterThanOrEqual(12 - 1e-9);
      }),
    );
  });
});
