import { describe, expect, it } from 'vitest';
import { evaluate } from '../../kernel-helpers/src/measure/formula.js';
import { pertMean } from '../../kernel-helpers/src/money/pert.js';
import { criticalPath } from '../../kernel-helpers/src/time/critical-path.js';

/*
 * B. W. Taylor, Introduction to Management Science, solutions to chapter 8, second network: earliest and latest times and
 * slack of every activity, read as printed. Activities are named by the events they lead from and to; whole numbers, so
 * they must agree exactly.
 */
const taylor: [
  from: number,
  to: number,
  time: number,
  es: number,
  ef: number,
  ls: number,
  lf: number,
  slack: number,
][] = [
  [1, 2, 8, 0, 8, 1, 9, 1],
  [1, 3, 10, 0, 10, 0, 10, 0],
  [1, 4, 9, 0, 9, 6, 15, 6],
  [2, 5, 6, 8, 14, 9, 15, 1],
  [2, 6, 4, 8, 12, 16, 20, 8],
  [3, 5, 5, 10, 15, 10, 15, 0],
  [4, 5, 0, 9, 9, 15, 15, 6],
  [4, 7, 7, 9, 16, 20, 27, 11],
  [5, 7, 12, 15, 27, 15, 27, 0],
  [5, 8, 15, 15, 30, 16, 31, 1],
  [6, 9, 18, 12, 30, 20, 38, 8],
  [7, 8, 4, 27, 31, 27, 31, 0],
  [8, 9, 7, 31, 38, 31, 38, 0],
];

describe('a network from a textbook with all its times', () => {
  const id = (from: number, to: number) => `${from}-${to}`;
  const network = criticalPath(
    taylor.map(([from, to, duration]) => ({
      id: id(from, to),
      duration,
      after: taylor.filter(([, end]) => end === from).map(([start, end]) => id(start, end)),
    })),
  );

  it.each(taylor)('activity %i-%i', (from, to, _, es, ef, ls, lf, slack) => {
    expect(network.times.find((one) => one.id === id(from, to))).toEqual({
      id: id(from, to),
      earliestStart: es,
      earliestFinish: ef,
      latestStart: ls,
      latestFinish: lf,
      slack,
      critical: slack === 0,
    });
  });

  it('takes 38 along 1-3-5-7-8-9', () => {
    expect(network).toMatchObject({ duration: 38, path: ['1-3', '3-5', '5-7', '7-8', '8-9'] });
  });
});

/*
 * F. S. Hillier and G. J. Lieberman, Introduction to Operations Research, chapter on project management, the construction
 * project of 14 activities in weeks: durations read in a reprint of the table; what comes before what, the three points,
 * and slack are from memory.
 */
const construction: [id: string, weeks: number, slack: number, points: [number, number, number], ...after: string[]][] =
  [
    ['A', 2, 0, [1, 2, 3]],
    ['B', 4, 0, [2, 3.5, 8], 'A'],
    ['C', 10, 0, [6, 9, 18], 'B'],
    ['D', 6, 4, [4, 5.5, 10], 'C'],
    ['E', 4, 0, [1, 4.5, 5], 'C'],
    ['F', 5, 0, [4, 4, 10], 'E'],
    ['G', 7, 4, [5, 6.5, 11], 'D'],
    ['H', 9, 4, [5, 8, 17], 'E', 'G'],
    ['I', 7, 2, [3, 7.5, 9], 'C'],
    ['J', 8, 0, [3, 9, 9], 'F', 'I'],
    ['K', 4, 1, [4, 4, 4], 'J'],
    ['L', 5, 0, [1, 5.5, 7], 'J'],
    ['M', 2, 4, [1, 2, 3], 'H'],
    ['N', 6, 0, [5, 5.5, 9], 'K', 'L'],
  ];

describe('the construction project of 14 activities', () => {
  const network = criticalPath(construction.map(([id, duration, , , ...after]) => ({ id, duration, after })));

  it('takes 44 weeks along A-B-C-E-F-J-L-N', () => {
    expect(network.duration).toBe(44);
    expect(network.path.join('-')).toBe('A-B-C-E-F-J-L-N');
  });

  it.each(construction)('activity %s, %d weeks, has slack %d', (id, weeks, slack, [a, m, b]) => {
    expect(network.times.find((one) => one.id === id)?.slack).toBe(slack);
    expect(evaluate(pertMean, { a, m, b })).toBeCloseTo(weeks, 12);
  });
});
