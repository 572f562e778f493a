import { describe, expect, it } from 'vitest';
import { layOutDovetails } from '../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../kernel-helpers/src/joints/finger-joint.js';
import { loweredFrontFinding } from '../../kernel-helpers/src/joints/lowered-front.js';

const boards = { boardWidth: '5 in', stockThickness: '1/2 in' };
const dovetails = layOutDovetails({
  ...boards,
  tails: 3,
  pinWidth: '1/4 in',
  halfPin: '3/8 in',
  topHalfPin: '1/2 in',
  slope: 8,
});
const fingers = (count: number) => layOutFingers({ ...boards, fingers: count, cutter: '1/8 in' });

describe('a front lowered for a sliding lid', () => {
  it('keeps its corner whole where the sides have the half pin or the finger at the upper edge', () => {
    const kept = (
      layout: Parameters<typeof loweredFrontFinding>[0]['layout'],
      firstBoards: 'front and back' | 'sides',
    ) => loweredFrontFinding({ layout, firstBoards, lowered: 0.5 }).verdict;
    expect(kept(dovetails, 'front and back')).toBe('ok');
    expect(kept(dovetails, 'sides')).toBe('stop');
    // Ten fingers: the first boards have the lower edge, the second boards the upper.
    expect(kept(fingers(10), 'front and back')).toBe('ok');
    expect(kept(fingers(10), 'sides')).toBe('stop');
    // Nine: the first boards have both edges.
    expect(kept(fingers(9), 'sides')).toBe('ok');
    expect(kept(fingers(9), 'front and back')).toBe('stop');
  });

  it('is cut into the next piece down by a lid that is thicker', () => {
    const thick = { firstBoards: 'front and back', lowered: 0.75 } as const;
    expect(loweredFrontFinding({ layout: dovetails, ...thick }).verdict).toBe('stop');
    expect(loweredFrontFinding({ layout: fingers(10), ...thick }).verdict).toBe('watch');
  });

  it('wants a thinner lid only where not even two fingers keep it', () => {
    const change = (lowered: number, firstBoards: 'front and back' | 'sides') =>
      loweredFrontFinding({ layout: fingers(24), firstBoards, lowered }).change;
    expect(change(2.5, 'front and back')).toContain('fingers: 2');
    expect(change(2.5, 'sides')).toContain('a thinner lid');
    expect(change(2.6, 'front and back')).toContain('a thinner lid');
  });

  it('names the most fingers that keep it, and those do', () => {
    for (const firstBoards of ['front and back', 'sides'] as const)
      for (const lowered of [0.25, 0.5, 0.75, 1]) {
        const { change } = loweredFrontFinding({ layout: fingers(24), firstBoards, lowered });
        const count = Number(change?.match(/^fingers: (\d+)/)?.[1]);
        expect(loweredFrontFinding({ layout: fingers(count), firstBoards, lowered }).verdict).toBe('ok');
        expect(loweredFrontFinding({ layout: fingers(count + 2), firstBoards, lowered }).verdict).toBe('watch');
      }
  });
});
