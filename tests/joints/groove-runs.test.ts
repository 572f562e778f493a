import { describe, expect, it } from 'vitest';
import { layOutDovetails } from '../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../kernel-helpers/src/joints/finger-joint.js';
import { grooveFindings } from '../../kernel-helpers/src/joints/groove-findings.js';
import { grooveRuns } from '../../kernel-helpers/src/joints/groove-runs.js';
import { hiddenHeights, nearestHiddenHeight } from '../../kernel-helpers/src/joints/hidden-heights.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';

const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
  proud: '1/8 in',
  foot: '1/4 in',
  bottomThickness: '3/16 in',
  bottomGroovePlay: 0,
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
    const runs = grooveRuns({ box, joints: { layout: corner('1/2 in'), firstBoards: 'front and back' } });
    const bottom = (board: string) => runs.find((run) => run.board === board && run.groove === 'bottom');
    expect(bottom('front')).toMatchObject({ ends: ['through', 'through'], from: 0, straddles: false });
    expect(bottom('side')).toMatchObject({ ends: ['stopped', 'stopped'] });
    // Stops 3/4 - 1/4 short of the end: its own depth past the neighbour's inside face.
    expect(bottom('side')?.from).toBe(0.5);
    expect(bottom('side')?.to).toBe(11 - 0.5);
  });

  it('in a tail, it is the other way round', () => {
    // Lower half pin 1/8, slope 3/32: the tail spans from 7/32 at its baseline on.
    const runs = grooveRuns({ box, joints: { layout: corner('1/8 in'), firstBoards: 'front and back' } });
    const bottom = (board: string) => runs.find((run) => run.board === board && run.groove === 'bottom');
    expect(bottom('front')?.ends).toEqual(['stopped', 'stopped']);
    expect(bottom('side')?.ends).toEqual(['through', 'through']);
  });

  it('across the line between a tail and a pin both boards stop, and it says so', () => {
    const runs = grooveRuns({ box, joints: { layout: corner('5/16 in'), firstBoards: 'front and back' } });
    for (const run of runs.filter(({ groove }) => groove === 'bottom')) {
      expect(run.straddles).toBe(true);
      expect(run.ends).toEqual(['stopped', 'stopped']);
      expect(run.why).toMatch(/across the line between a (tail and a pin|pin and a tail)/);
    }
  });

  it('from the line between two pieces on, it is behind the one above', () => {
    const layout = corner('1/2 in');
    const [top] = layout.tails;
    const grooves = box.grooves.map((groove) => ({ ...groove, fromBottom: top?.baselineFrom ?? 0 }));
    for (const run of grooveRuns({ box: { ...box, grooves }, joints: { layout, firstBoards: 'front and back' } }))
      expect(run.straddles).toBe(false);
  });

  it('wherever a groove lies, exactly one of two neighbours shows it unless it straddles', () => {
    for (let sixteenths = 1; sixteenths < 24; sixteenths++) {
      for (const firstBoards of ['front and back', 'sides'] as const) {
        const runs = grooveRuns({ box, joints: { layout: corner(`${sixteenths}/16 in`), firstBoards } });
        const front = runs.find(({ board, groove }) => board === 'front' && groove === 'bottom');
        const side = runs.find(({ board, groove }) => board === 'side' && groove === 'bottom');
        if (front?.straddles) expect([front.ends[0], side?.ends[0]]).toEqual(['stopped', 'stopped']);
        else expect(new Set([front?.ends[0], side?.ends[0]])).toEqual(new Set(['through', 'stopped']));
      }
    }
  });

  it('among fingers too, exactly one of two neighbours shows a groove unless it straddles', () => {
    const boards = { boardWidth: box.overall.height, stockThickness: '5/8 in', proud: '1/8 in' };
    for (let fingers = 2; fingers < 24; fingers++) {
      const layout = layOutFingers({ ...boards, fingers });
      for (const firstBoards of ['front and back', 'sides'] as const)
        for (const kind of ['bottom', 'lid']) {
          const runs = grooveRuns({ box, joints: { layout, firstBoards } }).filter(({ groove }) => groove === kind);
          const [side, back] = ['side', 'back'].map((name) => runs.find(({ board }) => board === name));
          // At the back, where no lid goes in.
          if (side?.straddles) expect([side.ends[1], back?.ends[1]]).toEqual(['stopped', 'stopped']);
          else expect(new Set([side?.ends[1], back?.ends[1]])).toEqual(new Set(['through', 'stopped']));
        }
    }
  });

  it('behind the lowest finger of the front, its bottom groove is stopped and that of the sides runs through', () => {
    // Nine fingers of about 9/16: the groove, 1/4 to 7/16, lies in the lowest.
    const layout = layOutFingers({ boardWidth: box.overall.height, stockThickness: '5/8 in', fingers: 9 });
    const runs = grooveRuns({ box, joints: { layout, firstBoards: 'front and back' } });
    const bottom = (board: string) => runs.find((run) => run.board === board && run.groove === 'bottom');
    expect(bottom('front')).toMatchObject({ ends: ['stopped', 'stopped'] });
    expect(bottom('front')?.why).toBe("meets a finger: it would show on the finger's end");
    expect(bottom('side')).toMatchObject({ ends: ['through', 'through'] });
    expect(bottom('side')?.why).toBe('meets a socket: its end is hidden behind the finger');
  });

  it('lets the lid in at the front of the sides', () => {
    const runs = grooveRuns({ box, joints: { layout: corner('1/2 in'), firstBoards: 'front and back' } });
    const side = runs.find(({ board, groove }) => board === 'side' && groove === 'lid');
    expect(side).toMatchObject({ from: 0, ends: ['through', 'stopped'] });
    expect(side?.why).toContain('runs out at the front');
  });
});

describe('grooves cut by a round cutter or at a saw', () => {
  const joints = { layout: corner('1/2 in'), firstBoards: 'front and back' } as const;

  it('a round cutter goes on by its radius past a stop, and nowhere else', () => {
    const [square, round] = [grooveRuns({ box, joints }), grooveRuns({ box, joints, roundCutter: '3/16 in' })];
    round.forEach((run, index) => {
      const { from, to, ends } = square[index] as (typeof square)[number];
      expect(run.from).toBe(ends[0] === 'stopped' ? from - 3 / 32 : from);
      expect(run.to).toBe(ends[1] === 'stopped' ? to + 3 / 32 : to);
      expect(run.roundEnd).toBe(ends.includes('stopped') ? 3 / 32 : undefined);
    });
  });

  it('run out on purpose, a groove through the joint is a stop that names where to stop instead', () => {
    const runs = grooveRuns({ box, joints, endToEnd: ['side', 'front'] });
    // The front's bottom groove is hidden anyway; the sides' shows.
    expect(runs.filter(({ shows }) => shows).map(({ board, groove }) => [board, groove])).toContainEqual([
      'side',
      'bottom',
    ]);
    expect(runs.find(({ board }) => board === 'front')?.shows).toBeUndefined();
    const found = grooveFindings({ runs, layout: joints.layout }).find(
      ({ rule }) => rule === 'bottom groove not through the joint',
    );
    expect(found).toMatchObject({ verdict: 'stop', figures: 'run out at the ends of side' });
    expect(found?.change).toContain('stop it 1/2 in (12.7 mm) from the end');
  });

  it.each([0, '2 in', 'thick'])('a cutter of %j is refused', (roundCutter) => {
    expect(() => grooveRuns({ box, joints, roundCutter })).toThrow(
      /^roundCutter: .* given; .*possible: 1\/64 in to 1 in/,
    );
  });
});

/** A corner with the one tail or pin that begins at that height. */
const only = (layout: ReturnType<typeof corner>, height: number) => ({
  pins: layout.pins.filter(({ from }) => from === height),
  tails: layout.tails.filter(({ baselineFrom }) => baselineFrom === height),
});

describe('findings on the grooves', () => {
  const findingsFor = (halfPin: string, roundCutter?: string) => {
    const layout = corner(halfPin);
    return grooveFindings({
      runs: grooveRuns({
        box,
        joints: { layout, firstBoards: 'front and back' },
        ...(roundCutter ? { roundCutter } : {}),
      }),
      layout,
    });
  };
  const one = (findings: ReturnType<typeof findingsFor>, rule: string) =>
    findings.find((finding) => finding.rule === rule);

  it('names the nearest height at which a straddling groove is hidden', () => {
    // Groove 1/4 to 7/16, half pin 0 to 5/16, tail from 13/32 at its baseline: down to 1/8, or up to 13/32.
    const found = one(findingsFor('5/16 in'), 'bottom groove behind one tail or one pin');
    expect(found?.verdict).toBe('watch');
    expect(found?.change).toContain('lower edge of the groove at 1/8 in (3.2 mm): foot less by 1/8 in (3.2 mm)');
  });

  it('says for each groove whether it straddles', () => {
    const layout = corner('1/2 in');
    const runs = grooveRuns({ box, joints: { layout, firstBoards: 'front and back' } });
    for (const kind of ['bottom', 'lid']) {
      const changed = runs.map((run) => ({ ...run, straddles: run.groove === kind }));
      const verdict = (groove: string) =>
        one(grooveFindings({ runs: changed, layout }), `${groove} groove behind one tail or one pin`)?.verdict;
      expect([verdict('bottom'), verdict('lid')]).toEqual(kind === 'bottom' ? ['watch', 'ok'] : ['ok', 'watch']);
    }
  });

  it('hides it behind a tail only, or a pin only, when told', () => {
    // Half pin 0 to 1/2, first tail at its baseline from 19/32.
    const layout = corner('1/2 in');
    const nearest = (of?: 'first' | 'second') => nearestHiddenHeight({ fromBottom: 1 / 4, width: 3 / 16, layout, of });
    expect([nearest(), nearest('second'), nearest('first')]).toEqual([1 / 4, 1 / 4, 19 / 32]);
  });

  it('says nothing against a groove in the half pin', () => {
    expect(one(findingsFor('1/2 in'), 'bottom groove behind one tail or one pin')?.verdict).toBe('ok');
    expect(one(findingsFor('1/2 in'), 'bottom groove not through the joint')?.verdict).toBe('ok');
  });

  it('wants wood left before a stopped end', () => {
    const rule = 'wood before the end of a stopped bottom groove';
    expect(one(findingsFor('1/2 in'), rule)?.verdict).toBe('ok'); // 3/4 - 1/4
    expect(one(findingsFor('1/2 in', '3/4 in'), rule)?.verdict).toBe('ok'); // 1/2 - 3/8
    expect(one(findingsFor('1/2 in', '7/8 in'), rule)?.verdict).toBe('watch'); // 1/2 - 7/16
    expect(one(findingsFor('1/2 in', '1 in'), rule)?.verdict).toBe('stop'); // nothing
  });

  it('judges the lid groove by its own depth', () => {
    const layout = corner('1/2 in');
    const runs = grooveRuns({ box, joints: { layout, firstBoards: 'front and back' } });
    for (const kind of ['bottom', 'lid'] as const) {
      const changed = runs.map((run) => ({
        ...run,
        depth: run.groove === kind ? 3 / 4 - 1 / 16 : 1 / 4,
        ends: ['stopped', 'stopped'] as (typeof run)['ends'],
      }));
      const verdicts = grooveFindings({ runs: changed, layout }).filter(({ rule }) => rule.startsWith('wood before'));
      expect(verdicts.map(({ verdict }) => verdict)).toEqual(kind === 'bottom' ? ['watch', 'ok'] : ['ok', 'watch']);
    }
  });

  it('names a height that cannot be read off a rule where the piece is hardly wider than the groove', () => {
    // Each tail and pin by itself, a groove 1/1000 narrower: no 64th lies in that, or one only at its very edge.
    const layout = corner('5/16 in');
    for (const { from, to } of hiddenHeights(layout))
      for (const fromBottom of [from - 1 / 100, from + 1 / 100]) {
        const width = to - from - 1 / 1000;
        const nearest = nearestHiddenHeight({
          fromBottom,
          width,
          layout: { ...layout, ...only(layout, from) },
        }) as number;
        expect(nearest).toBeGreaterThanOrEqual(from - 1e-9);
        expect(nearest + width).toBeLessThanOrEqual(to + 1e-9);
      }
  });

  it('the height it names is hidden, can be read off a rule, and no other is nearer', () => {
    for (let sixteenths = 2; sixteenths < 24; sixteenths++) {
      const layout = corner(`${sixteenths}/16 in`);
      for (let place = 0; place < 70; place++) {
        const fromBottom = place / 16;
        const hidden = (height: number) =>
          hiddenHeights(layout).some(({ from, to }) => height >= from - 1e-9 && height + 3 / 16 <= to + 1e-9);
        const nearest = nearestHiddenHeight({ fromBottom, width: 3 / 16, layout }) as number;
        expect(hidden(nearest)).toBe(true);
        // Every place here leaves 1/64 in or more beside the groove, or starts at one: it can be read off a rule.
        if (nearest !== fromBottom) expect((nearest * 64) % 1).toBe(0);
        const distance = Math.abs(nearest - fromBottom);
        for (let step = -distance + 1 / 64; step <= distance - 1 / 64; step += 1 / 128)
          expect(hidden(fromBottom + step), `${fromBottom} moved by ${step}`).toBe(false);
      }
    }
  });
});
