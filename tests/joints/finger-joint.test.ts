import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutFingers } from '../../kernel-helpers/src/joints/finger-joint.js';
import { loweredFrontFinding } from '../../kernel-helpers/src/joints/lowered-front.js';

const usual = { boardWidth: '5 in', stockThickness: '1/2 in', proud: '1/8 in', fingers: 10, cutter: '1/2 in', play: 0 };
type Input = Parameters<typeof layOutFingers>[0];

describe('fingers worked by hand', () => {
  it('ten fingers on 5 in', () => {
    const joint = layOutFingers(usual);
    expect(joint.fingerWidth).toBe(0.5); // 5 / 10
    expect(joint.gaugeSetting).toBe(0.625); // 1/2 + 1/8
    expect(joint.setUp.firstBoardFence).toEqual([0.5, 1.5, 2.5, 3.5, 4.5]);
    expect(joint.setUp.secondBoardFence).toEqual([0, 1, 2, 3, 4]);
    expect(joint.setUp.passes).toBe(1);
    expect(joint.note).toContain('even count');
  });

  it('shares the play between both boards, and leaves the outer edges where they are', () => {
    const { first, second, setUp } = layOutFingers({ ...usual, play: 0.008 });
    // The key is as thick as a finger is wide: 1/2 less half the play.
    expect(setUp.keyDistance).toBeCloseTo(0.5 - 0.004, 12);
    expect(first[2]?.to).toBeCloseTo(1 + 0.002 + setUp.keyDistance, 12);
    expect(first[1]?.from).toBeCloseTo(0.5 - 0.002, 12);
    expect(first[1]?.to).toBeCloseTo(1 + 0.002, 12);
    expect(second[1]?.from).toBeCloseTo(0.5 + 0.002, 12);
    expect(first[0]?.from).toBe(0);
    expect(second.at(-1)?.to).toBe(5);
  });

  it('takes the count that comes nearest to the width asked for', () => {
    expect(layOutFingers({ ...usual, fingers: undefined, fingerWidth: '3/8 in', cutter: '1/8 in' }).count).toBe(13); // 5 / 0.375 = 13.3
    expect(layOutFingers({ ...usual, fingers: undefined, fingerWidth: '5 in' }).count).toBe(2);
    expect(layOutFingers({ ...usual, fingers: 9 }).note).toContain('odd count');
  });
});

it('takes a cutter as wide as the socket, a finger and half the play, and no wider', () => {
  expect(layOutFingers({ ...usual, play: 0.004, cutter: 0.502 }).setUp.passes).toBe(1);
  expect(() => layOutFingers({ ...usual, play: 0.004, cutter: 0.503 })).toThrow('fingers: 10 given');
});

describe('any finger joint', () => {
  const joints = fc.record({
    boardWidth: fc.integer({ min: 16, max: 320 }).map((marks) => marks / 16),
    stockThickness: fc.integer({ min: 4, max: 16 }).map((marks) => marks / 16),
    proud: fc.integer({ min: 0, max: 3 }).map((marks) => marks / 16),
    fingers: fc.integer({ min: 2, max: 7 }),
    cutter: fc.constant(1 / 8),
    play: fc.integer({ min: 0, max: 10 }).map((thousandths) => thousandths / 1000),
  });

  it('opens a socket in one board wherever the other has a finger, wider by the play', () => {
    fc.assert(
      fc.property(joints, (input) => {
        const { first, second, count } = layOutFingers(input);
        first.forEach((piece, index) => {
          const other = second[index];
          expect(new Set([piece.kind, other?.kind])).toEqual(new Set(['finger', 'socket']));
          const width = ({ from, to }: { from: number; to: number } = { from: 0, to: 0 }) => to - from;
          const [finger, socket] = piece.kind === 'finger' ? [piece, other] : [other, piece];
          const lines = count === 2 || index === 0 || index === count - 1 ? 1 : 2;
          expect(width(socket) - width(finger)).toBeCloseTo((lines * input.play) / 2, 12);
        });
      }),
    );
  });

  it('fills each board from edge to edge', () => {
    fc.assert(
      fc.property(joints, (input) => {
        for (const board of [layOutFingers(input).first, layOutFingers(input).second]) {
          board.slice(1).forEach(({ from }, index) => {
            expect(from).toBeCloseTo(board[index]?.to as number, 12);
          });
          expect(board.at(-1)?.to).toBe(input.boardWidth);
        }
      }),
    );
  });
});

describe('findings', () => {
  it.each<[Partial<Input>, string, string]>([
    [{}, 'fingers about as wide as the stock', 'ok'],
    [{ fingers: 3 }, 'fingers about as wide as the stock', 'watch'],
    [{ fingers: 4 }, 'fingers about as wide as the stock', 'watch'], // two and a half times
    [
      { boardWidth: '4 in', fingers: 13, stockThickness: '1 in', cutter: '1/8 in' },
      'fingers about as wide as the stock',
      'watch',
    ],
    [{ fingers: 5 }, 'fingers about as wide as the stock', 'ok'], // twice the stock
    [{ boardWidth: '4 in', fingers: 8, stockThickness: '1 1/2 in' }, 'fingers about as wide as the stock', 'ok'], // a third
    [{}, 'room for glue between the fingers', 'watch'],
    [{ play: 0.002 }, 'room for glue between the fingers', 'ok'],
    [{ play: 0.01 }, 'room for glue between the fingers', 'ok'],
    [{ play: 0.004 }, 'room for glue between the fingers', 'ok'],
    [{ cutter: '1/8 in' }, 'socket made by whole settings of the cutter', 'watch'],
    [{ play: 0.002 }, 'jig adds up over the width', 'watch'],
    [{ play: 0.004 }, 'jig adds up over the width', 'watch'],
    [{ play: 0.005 }, 'jig adds up over the width', 'ok'], // five sockets
    [{ play: 0.006 }, 'jig adds up over the width', 'ok'],
  ])('%j: %s is %s', (change, rule, verdict) => {
    expect(layOutFingers({ ...usual, ...change }).findings.find((finding) => finding.rule === rule)?.verdict).toBe(
      verdict,
    );
  });
});

it('offers fingers as wide as the cutter only where the edges stay as they are and the fingers are strong enough', () => {
  const advice = (change: Partial<Input>) =>
    layOutFingers({ boardWidth: '4 in', stockThickness: '1/2 in', play: 0, ...change }).findings.find(({ rule }) =>
      rule.startsWith('socket'),
    )?.change;
  // 4 in over 1/2 in is 8, even as 6 is; over 4/9 in it is 9, odd; over 1/8 in it is 32, each a quarter of the stock.
  expect(advice({ fingers: 6, cutter: '1/2 in' })).toContain('or 8 fingers');
  expect(advice({ boardWidth: '3 in', stockThickness: '3/4 in', fingers: 6, cutter: '1/4 in' })).toContain(
    'or 12 fingers',
  ); // a third
  expect(advice({ boardWidth: '1 in', fingers: 2, cutter: '1/2 in' })).toContain('or 2 fingers');
  // 4 in over 1/8 less half of 1/32 is 36.6: of 36 each socket takes two passes, and 37 are too narrow for the cutter.
  expect(advice({ fingers: 7, stockThickness: '1/4 in', cutter: '1/8 in', play: 1 / 32 })).not.toContain('fingers');
  expect(advice({ fingers: 6, cutter: 4 / 9 })).not.toContain('fingers');
  expect(advice({ fingers: 6, cutter: '1/8 in' })).not.toContain('fingers');
});

describe('following what a finding proposes', () => {
  const numbered = (text: string, pattern: RegExp) => (pattern.exec(text) ?? []).slice(1).map(Number);

  /** What a maker would type who does what the finding says; nothing where it changes no parameter. */
  function followed(change: string): Partial<Input & { firstBoards: 'turned' }>[] {
    const [from, to] = numbered(change, /fingers from (\d+) to (\d+), an/);
    const [one] = numbered(change, /fingers: (\d+)/);
    const [whole] = numbered(change, /, or (\d+) fingers/);
    const [cutter] = numbered(change, /a cutter of (?:at most )?([\d.]+) in/);
    const [least, most] = numbered(change, /play from ([\d.]+) to ([\d.]+) in/);
    const bounds = change.includes('cutter of at most') ? { cutter } : {};
    return [
      ...(from !== undefined && to !== undefined
        ? Array.from({ length: (to - from) / 2 + 1 }, (_, i) => ({ fingers: from + 2 * i }))
        : []),
      ...[one, whole].filter((count) => count !== undefined).map((fingers) => ({ fingers })),
      ...(one !== undefined && change.includes('or fewer by an even number') ? [{ fingers: one - 2 }] : []),
      ...(cutter !== undefined && least === undefined ? [{ cutter }] : []),
      ...[least, most].filter((play) => play !== undefined).map((play) => ({ play, ...bounds })),
      ...(change.includes('turn firstBoards about') ? [{ firstBoards: 'turned' as const }] : []),
    ];
  }

  const inputs = fc.record({
    boardWidth: fc.integer({ min: 24, max: 200 }).map((marks) => marks / 16),
    stockThickness: fc.integer({ min: 4, max: 16 }).map((marks) => marks / 16),
    fingers: fc.integer({ min: 2, max: 40 }),
    cutter: fc.constantFrom(1 / 8, 3 / 16, 1 / 4, 1 / 2),
    play: fc.integer({ min: 0, max: 20 }).map((thousandths) => thousandths / 1000),
  });
  const lids = fc.integer({ min: 2, max: 12 }).map((eighths) => eighths / 16);
  const judged = (input: Input, firstBoards: 'sides' | 'front and back', lowered: number) => {
    const layout = layOutFingers(input);
    return [loweredFrontFinding({ layout, firstBoards, lowered }), ...layout.findings];
  };

  it('is always possible, and makes no other rule stop', () => {
    fc.assert(
      fc.property(inputs, lids, fc.boolean(), (input, lowered, sides) => {
        fc.pre(input.cutter <= input.boardWidth / input.fingers + input.play / 2);
        const before = judged(input, sides ? 'sides' : 'front and back', lowered);
        const stops = before.filter(({ verdict }) => verdict === 'stop').map(({ rule }) => rule);
        for (const finding of before.filter(({ verdict }) => verdict !== 'ok'))
          for (const { firstBoards, ...change } of followed(finding.change ?? '')) {
            const first = sides === (firstBoards === undefined) ? 'sides' : 'front and back';
            const after = judged({ ...input, ...change }, first, lowered);
            const stopped = after.filter(({ verdict }) => verdict === 'stop').map(({ rule }) => rule);
            expect(
              stopped.filter((rule) => !stops.includes(rule)),
              finding.change,
            ).toEqual([]);
            // And it cures what it was said for.
            const again = after.find(({ rule }) => rule === finding.rule);
            expect(['ok', ...(finding.verdict === 'stop' ? ['watch'] : [])], finding.change).toContain(again?.verdict);
          }
      }),
      { numRuns: 1500 },
    );
  });
});

describe('bad input', () => {
  it.each<[Partial<Input>, string]>([
    [
      { fingers: 40 },
      'fingers: 40 given, 1/8 in (3.2 mm) wide each; possible: up to 10 with a cutter of 1/2 in (12.7 mm)',
    ],
    [
      { fingers: 2, cutter: '1 in', boardWidth: '1 in' },
      'cutter: 1 in (25.4 mm) given; possible: up to 1/2 in (12.7 mm)',
    ],
    [{ fingers: 1 }, 'fingers: 1 given; possible: two or more'],
    [{ fingers: 2.5 }, 'fingers: 2.5 given; possible: a whole number'],
    [{ fingers: undefined }, 'fingers: nothing given; possible: a count, or fingerWidth'],
    [{ fingerWidth: '1/2 in' }, 'fingers: 10 given, and fingerWidth 1/2 in (12.7 mm); possible: one of the two'],
    [{ boardWidth: 'wide' }, 'boardWidth: "wide" given; not a length'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => layOutFingers({ ...usual, ...bad })).toThrow(message);
  });
});
