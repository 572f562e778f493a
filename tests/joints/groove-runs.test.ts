import { describe, expect, it } from 'vitest';
import { sizeBox } from '../../kernel-helpers/src/box/size-box.js';
import { layOutDovetails } from '../../kernel-helpers/src/joints/dovetails.js';
import { grooveRuns } from '../../kernel-helpers/src/joints/groove-runs.js';

const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
  proud: '1/8 in',
  foot: '1/4 in',
  bottomThickness: '3/16 in',
});
const corner = (halfPin: string) =>
  layOutDovetails({
    boardWidth: box.overall.height,
    stockThickness: '5/8 in',
    proud: '1/8 in',
    tails: 3,
    pinWidth: '1/4 in',
    halfPin,
    topHalfPin: '5/8 in',
    slope: '1:8',
  });

describe('where the grooves come out', () => {
  it('in the half pin, the tail board runs through and the pin board stops', () => {
    // Bottom groove from 1/4 to 7/16, lower half pin 1/2: all of it in the half pin.
    const runs = grooveRuns({ box, joints: { layout: corner('1/2 in'), tailBoards: 'front and back' } });
    const bottom = (board: string) => runs.find((run) => run.board === board && run.groove === 'bottom');
    expect(bottom('front')).toMatchObject({ ends: ['through', 'through'], from: 0, straddles: false });
    expect(bottom('side')).toMatchObject({ ends: ['stopped', 'stopped'] });
    // Stops 3/4 - 1/4 short of the end: its own depth past the neighbour's inside face.
    expect(bottom('side')?.from).toBe(0.5);
    expect(bottom('side')?.to).toBe(11 - 0.5);
  });

  it('in a tail, it is the other way round', () => {
    // Lower half pin 1/8, slope 3/32: the tail spans from 7/32 at its baseline on.
    const runs = grooveRuns({ box, joints: { layout: corner('1/8 in'), tailBoards: 'front and back' } });
    const bottom = (board: string) => runs.find((run) => run.board === board && run.groove === 'bottom');
    expect(bottom('front')?.ends).toEqual(['stopped', 'stopped']);
    expect(bottom('side')?.ends).toEqual(['through', 'through']);
  });

  it('across the line between a tail and a pin both boards stop, and it says so', () => {
    const runs = grooveRuns({ box, joints: { layout: corner('5/16 in'), tailBoards: 'front and back' } });
    for (const run of runs.filter(({ groove }) => groove === 'bottom')) {
      expect(run.straddles).toBe(true);
      expect(run.ends).toEqual(['stopped', 'stopped']);
      expect(run.why).toContain('across the line between a tail and a pin');
    }
  });

  it('wherever a groove lies, exactly one of two neighbours shows it unless it straddles', () => {
    for (let sixteenths = 1; sixteenths < 24; sixteenths++) {
      for (const tailBoards of ['front and back', 'sides'] as const) {
        const runs = grooveRuns({ box, joints: { layout: corner(`${sixteenths}/16 in`), tailBoards } });
        const front = runs.find(({ board, groove }) => board === 'front' && groove === 'bottom');
        const side = runs.find(({ board, groove }) => board === 'side' && groove === 'bottom');
        if (front?.straddles) expect([front.ends[0], side?.ends[0]]).toEqual(['stopped', 'stopped']);
        else expect(new Set([front?.ends[0], side?.ends[0]])).toEqual(new Set(['through', 'stopped']));
      }
    }
  });

  it('lets the lid in at the front of the sides', () => {
    const runs = grooveRuns({ box, joints: { layout: corner('1/2 in'), tailBoards: 'front and back' } });
    const side = runs.find(({ board, groove }) => board === 'side' && groove === 'lid');
    expect(side).toMatchObject({ from: 0, ends: ['through', 'stopped'] });
    expect(side?.why).toContain('runs out at the front');
  });
});
