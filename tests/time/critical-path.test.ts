import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Activity, criticalPath } from '../../kernel-helpers/src/time/critical-path.js';

const activity = (id: string, duration: number, ...after: string[]): Activity => ({ id, duration, after });

/** Networks without circles: each activity comes after some of those before it. */
const networks = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 20 }), fc.array(fc.nat(), { maxLength: 3 })), {
    minLength: 1,
    maxLength: 12,
  })
  .map((rows) =>
    rows.map(([duration, before], i) =>
      activity(`a${i}`, duration, ...new Set(i === 0 ? [] : before.map((number) => `a${number % i}`))),
    ),
  );

/** Every chain from an activity to its very first, slowly. */
function longestChain(network: Activity[], id: string): number {
  const { duration, after } = network.find((one) => one.id === id) as Activity;
  return duration + Math.max(0, ...after.map((before) => longestChain(network, before)));
}

describe('the critical path', () => {
  it('is as long as the longest chain, found the slow way', () => {
    fc.assert(
      fc.property(networks, (network) => {
        const { duration, path } = criticalPath(network);
        expect(duration).toBe(Math.max(...network.map(({ id }) => longestChain(network, id))));
        const onPath = path.map((id) => network.find((one) => one.id === id) as Activity);
        expect(onPath.reduce((sum, one) => sum + one.duration, 0)).toBe(duration);
        for (const [i, one] of onPath.entries()) if (i > 0) expect(one.after).toContain(path[i - 1]);
      }),
    );
  });

  it('slack is what may be lost: one activity may take that much longer and no more', () => {
    fc.assert(
      fc.property(networks, fc.nat(), (network, pick) => {
        const { duration, times } = criticalPath(network);
        const { id, slack } = times[pick % times.length] as { id: string; slack: number };
        const longer = (by: number) =>
          criticalPath(network.map((one) => (one.id === id ? { ...one, duration: one.duration + by } : one))).duration;
        expect(longer(slack)).toBe(duration);
        expect(longer(slack + 1)).toBe(duration + 1);
      }),
    );
  });

  it('does not mind in which order the activities are given', () => {
    const network = [activity('glue', 1, 'joint'), activity('joint', 6, 'mill'), activity('mill', 3)];
    expect(criticalPath(network)).toMatchObject({ duration: 10, path: ['mill', 'joint', 'glue'] });
  });

  it('names activities that wait for each other, in a ring', () => {
    const ring = [
      activity('mill', 1),
      activity('sand', 1, 'mill', 'finish'),
      activity('glue', 1, 'sand'),
      activity('finish', 1, 'glue'),
    ];
    expect(() => criticalPath(ring)).toThrow(
      'operations: sand after finish after glue after sand: they wait for each other',
    );
    expect(() => criticalPath([activity('sand', 1, 'sand')])).toThrow('sand after sand');
  });

  it.each([
    [[activity('a', 1, 'b')], 'operations: a comes after "b", which is not there'],
    [[activity('a', 1), activity('a', 2)], 'operations: "a" is given twice'],
    [[activity('a', -1)], 'operations: a takes -1; possible: a time of zero or more'],
    [[activity('a', Number.NaN)], 'operations: a takes NaN'],
  ])('refuses %j', (network, message) => {
    expect(() => criticalPath(network)).toThrow(message);
  });
});
