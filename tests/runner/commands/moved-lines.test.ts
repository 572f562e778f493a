import { expect, test } from 'vitest';
import { movedLines } from '../../../kernel-helpers/src/runner/commands/moved-lines.js';

test('a small table, its columns under their heads, at most two figures of a decision', () => {
  const figure = (name: string, before: string, now: string) => ({ name, before, now });
  const lines = movedLines([
    { what: 'sizing', moved: [figure('Overall', '11 x 7 3/4 x 5 in', '12 x 7 3/4 x 5 in')] },
    {
      what: 'quote',
      moved: [
        figure('Price', '$952.00', '$977.00'),
        figure('Hours', '12.6 h', '13.0 h'),
        figure('Cost', '$761', '$781'),
      ],
    },
  ]);
  expect(lines).toEqual([
    '  What moved           before             now',
    '  sizing      Overall  11 x 7 3/4 x 5 in  12 x 7 3/4 x 5 in',
    '  quote       Price    $952.00            $977.00',
    '              Hours    12.6 h             13.0 h',
  ]);
});

test('the same figure in two decisions is told once', () => {
  const inside = { name: 'Inside', before: '9 in', now: '10 in' };
  const lines = movedLines([
    { what: 'brief', moved: [inside] },
    { what: 'sizing', moved: [inside] },
  ]);
  expect(lines.map((line) => line.trim().split(' ')[0])).toEqual(['What', 'brief']);
});

test('a figure that came or went has nothing on the other side', () => {
  expect(movedLines([{ what: 'surface', moved: [{ name: 'Last play', now: '0.04 in' }] }])[1]).toMatch(
    /none +0\.04 in$/,
  );
});

test('when nothing moved there is no table', () => {
  expect(movedLines([])).toEqual([]);
});
