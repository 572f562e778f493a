import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allOperations } from '../../../kernel-helpers/src/money/operations.js';
import { closingPlot } from '../../../kernel-helpers/src/show/plots/closing-plot.js';
import { cutOff, overlaps, pictureOf } from '../read-svg.js';

const hours = fc.double({ min: 0, max: 60, noNaN: true });
const operations = fc
  .subarray(allOperations(), { minLength: 1 })
  .chain((list) =>
    fc.tuple(
      ...list.map(({ id, name }) =>
        fc.record({ id: fc.constant(id), name: fc.constant(name), estimated: hours, deviation: hours, actual: hours }),
      ),
    ),
  );

test('every operation is named with its hours, and no label runs into another or out of the picture', () => {
  fc.assert(
    fc.property(operations, (worked) => {
      const picture = pictureOf(closingPlot(worked));
      const texts = picture.labels.map(({ text }) => text);
      for (const { name, actual, estimated } of worked) {
        expect(texts).toContain(name);
        expect(texts).toContain(`${actual.toFixed(1)} (${estimated.toFixed(1)})`);
      }
      expect(overlaps(picture.labels)).toEqual([]);
      expect(cutOff(picture.labels, picture)).toEqual([]);
    }),
    { numRuns: 30 },
  );
});

test('the caption names what lies outside its range', () => {
  const shown = closingPlot([
    { id: 'lid', name: 'Fit the lid', estimated: 1, deviation: 0.1, actual: 2 },
    { id: 'finish', name: 'Finish', estimated: 1, deviation: 0.1, actual: 1.1 },
  ]);
  expect(shown.text).toContain('Outside the range: fit the lid.');
});
