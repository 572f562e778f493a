import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutDovetails } from '../../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../../kernel-helpers/src/joints/finger-joint.js';
import { dividerWalk } from '../../../kernel-helpers/src/show/drawing/divider-walk.js';
import { jointDrawing } from '../../../kernel-helpers/src/show/drawing/joint-drawing.js';
import { drawingOf, hiddenArrowheads, linesThrough } from '../drawing-text.js';
import { elementsOf } from '../read-html.js';
import { cutOff, overlaps } from '../read-svg.js';

const front = layOutDovetails({
  boardWidth: '5 in',
  stockThickness: '5/8 in',
  proud: '1/8 in',
  tails: 3,
  pinWidth: '1/4 in',
  halfPin: '3/8 in',
  topHalfPin: '5/8 in',
  slope: '1:8',
});

const sixteenths = (min: number, max: number) => fc.integer({ min, max }).map((marks) => marks / 16);
const layouts = fc
  .record({
    boardWidth: sixteenths(12, 960),
    stockThickness: sixteenths(4, 24),
    proud: sixteenths(0, 3),
    tailToPin: fc.integer({ min: 1, max: 8 }),
    pinWidth: sixteenths(1, 8),
    halfPin: sixteenths(1, 12),
    topHalfPin: sixteenths(1, 12),
    slope: fc.integer({ min: 4, max: 10 }),
  })
  .filter(
    ({ boardWidth, halfPin, topHalfPin, pinWidth, stockThickness, proud, slope }) =>
      boardWidth - halfPin - topHalfPin > pinWidth + (2 * (stockThickness + proud)) / slope + 1 / 16,
  )
  .map(layOutDovetails);
const fingers = fc
  .record({
    boardWidth: sixteenths(12, 480),
    stockThickness: sixteenths(4, 24),
    proud: sixteenths(0, 3),
    fingerWidth: sixteenths(3, 24),
  })
  .map(layOutFingers);
const options = fc.record({ lengths: fc.constantFrom('tape' as const, 'mm' as const, 'both' as const) });

describe('the drawing of a corner', () => {
  it('gives every size that is scribed', () => {
    const texts = drawingOf(jointDrawing(front)).labels.map(({ text }) => text);
    // Tails of (5 - 3/8 - 5/8 + 1/4) / 3 - 1/4 = 1 1/6, which the tape shows as 1 11/64.
    for (const size of [
      '3/8 in',
      '1 11/64 in',
      '1/4 in',
      'dividers 1.417 in',
      '5/8 in',
      '5 in',
      'gauge 3/4 in',
      'proud 1/8 in',
    ])
      expect(texts).toContain(size);
    expect(texts).toContain('63/64 in'); // 1 1/6 - 2 x 3/32 at the baseline
    expect(texts).toContain('7/16 in'); // 1/4 + 2 x 3/32
  });

  it('says the main figures to someone who cannot see it', () => {
    const alt = elementsOf(jointDrawing(front).text, 'img')[0]?.getAttribute('alt');
    expect(alt).toContain('3 tails of 1 11/64 in');
    expect(alt).toContain('half pins of 3/8 in below and 5/8 in above');
    expect(alt).toContain('gauge 3/4 in');
  });

  it('says the figures of a finger joint', () => {
    const layout = layOutFingers({ boardWidth: '5 in', stockThickness: '1/2 in', fingers: 10 });
    const drawing = jointDrawing(layout);
    expect(elementsOf(drawing.text, 'img')[0]?.getAttribute('alt')).toContain(
      '10 fingers of 1/2 in on a board 5 in wide; gauge 1/2 in',
    );
    expect(drawingOf(drawing).labels.map(({ text }) => text)).toContain('5 in');
  });

  it('draws slopes at their angle and every piece to one scale', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        const { all } = drawingOf(jointDrawing(layout));
        const corners = all('polygon[stroke]').map((each) =>
          (each.getAttribute('points') ?? '').split(' ').map((point) => point.split(',').map(Number)),
        );
        // Pins on the face are the areas between the outline of the tail board's end and that of the pin board's.
        const face = corners.slice(layout.pins.length + 1, 2 * layout.pins.length + 1);
        const widest = corners[layout.pins.length] as number[][];
        const scale = ((widest[1]?.[0] as number) - (widest[0]?.[0] as number)) / layout.boardWidth;
        const left = widest[0]?.[0] as number;
        face.forEach((pin, i) => {
          const { from, to, baselineFrom, baselineTo } = layout.pins[i] as (typeof layout.pins)[0];
          const across = pin.map(([x]) => ((x as number) - left) / scale);
          for (const [j, inches] of [from, to, baselineTo, baselineFrom].entries())
            expect(across[j]).toBeCloseTo(inches, 2);
          expect(((pin[2]?.[1] as number) - (pin[1]?.[1] as number)) / scale).toBeCloseTo(layout.gaugeSetting, 2);
        });
      }),
      { numRuns: 40 },
    );
  });

  it('never lets a label cover another or run off the edge, on a stick or on a wide carcase', () => {
    fc.assert(
      fc.property(fc.oneof(layouts, fingers), options, (layout, lengths) => {
        const drawing = drawingOf(jointDrawing(layout, lengths));
        expect(overlaps(drawing.labels)).toEqual([]);
        expect(linesThrough(drawing)).toEqual([]);
        expect(hiddenArrowheads(drawing)).toEqual([]);
        expect(cutOff(drawing.labels, drawing)).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('the divider walk', () => {
  it('names every point the dividers make, from the lower edge', () => {
    const texts = drawingOf(dividerWalk(front)).labels.map(({ text }) => text);
    // 3/8 + 1 5/12 i and 4 3/8 - 1 5/12 i, to the nearest 1/64.
    for (const mark of ['1 51/64 in', '3 13/64 in', '4 5/8 in', '2 61/64 in', '1 35/64 in', '1/8 in'])
      expect(texts).toContain(mark);
    expect(texts.filter((text) => /^[1-3]$/.test(text))).toEqual(['1', '2', '3', '1', '2', '3']);
  });

  it('never lets a label cover another or run off the edge', () => {
    fc.assert(
      fc.property(layouts, options, (layout, lengths) => {
        const drawing = drawingOf(dividerWalk(layout, lengths));
        expect(overlaps(drawing.labels)).toEqual([]);
        expect(linesThrough(drawing)).toEqual([]);
        expect(hiddenArrowheads(drawing)).toEqual([]);
        expect(cutOff(drawing.labels, drawing)).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});
