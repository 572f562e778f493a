import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../../kernel-helpers/src/measure/length.js';
import { drawnBox } from '../../../kernel-helpers/src/piece/box/drawn-box.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { explodedView } from '../../../kernel-helpers/src/show/drawing/exploded-view.js';
import { projected } from '../../../kernel-helpers/src/show/drawing/kit/projection.js';
import { pieceDrawing } from '../../../kernel-helpers/src/show/drawing/piece-drawing.js';
import { drawingOf, hiddenArrowheads, linesThrough } from '../drawing-text.js';
import { cutOff, overlaps } from '../read-svg.js';

const teaChest = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
  proud: '1/8 in',
});

const inches = (least: number, most: number) =>
  fc.integer({ min: least * 64, max: most * 64 }).map((sixtyFourths) => sixtyFourths / 64);

describe('a box taken apart', () => {
  it('names every part, without one label over another, for boxes of any shape', () => {
    fc.assert(
      fc.property(inches(1, 36), inches(1, 24), inches(0.5, 18), (insideLength, insideWidth, insideDepth) => {
        const box = sizeBox({ insideLength, insideWidth, insideDepth, species: 'walnut-black', proud: '1/8 in' });
        const picture = drawingOf(explodedView(drawnBox(box)));
        expect(picture.labels.map(({ text }) => text).sort()).toEqual(
          ['back', 'bottom', 'front', 'left side', 'lid', 'right side'].sort(),
        );
        expect(overlaps(picture.labels)).toEqual([]);
        expect(linesThrough(picture)).toEqual([]);
        expect(hiddenArrowheads(picture)).toEqual([]);
        expect(cutOff(picture.labels, picture)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the drawing of a box', () => {
  it('gives the sizes a maker measures, in tape fractions', () => {
    const texts = drawingOf(pieceDrawing(drawnBox(teaChest))).labels.map(({ text }) => text);
    expect(texts.sort()).toEqual(
      [
        'Plan',
        'Front',
        'Right side',
        '7 3/4 in',
        '11 in',
        '11 in',
        '4 61/64 in',
        'inside 6 1/4 in',
        'inside 9 1/2 in',
        'front 4 29/64 in',
        'clear 4 in',
      ].sort(),
    );
  });

  it('draws all three views to one scale: every size line is as long as it says', () => {
    fc.assert(
      fc.property(inches(1, 36), inches(1, 24), inches(0.5, 18), (insideLength, insideWidth, insideDepth) => {
        const box = sizeBox({ insideLength, insideWidth, insideDepth, species: 'walnut-black' });
        const { all, labels } = drawingOf(pieceDrawing(drawnBox(box)));
        const sizes = labels
          .filter(({ text }) => /\d/.test(text))
          .map(({ text }) => parseLength(text.replace(/^[a-z]+ /, '')));
        // Each size ends in two arrowheads, which begin with their points.
        const points = all('polygon:not([stroke])').map((each) =>
          ((each.getAttribute('points') ?? '').split(' ')[0] ?? '').split(',').map(Number),
        );
        const drawn = sizes.map((_, i) => {
          const [[ax = 0, ay = 0] = [], [bx = 0, by = 0] = []] = points.slice(2 * i);
          return Math.hypot(bx - ax, by - ay);
        });
        const scale = (drawn[0] as number) / (sizes[0] as number);
        for (const [i, size] of sizes.entries()) expect((drawn[i] as number) / size / scale).toBeCloseTo(1, 2);
      }),
      { numRuns: 60 },
    );
  });

  it('dashes what lies behind: lid and bottom in their grooves, seen from the side', () => {
    const plain = sizeBox({ insideLength: 10, insideWidth: 6, insideDepth: 4, species: 'walnut-black' });
    const shapes = projected(drawnBox(plain).solids, 'right side');
    const along = (type: string, height: number) =>
      shapes
        .filter((shape) => shape.type === type && shape.points.every(([, y]) => Math.abs(y - height) < 1e-9))
        .map(({ points }) => points.map(([x]) => x));
    // The bottom reaches 1/4 less half of 3/64 into its grooves; the side covers all of it.
    const reach = 0.25 - 3 / 128;
    expect(along('hidden', 0.25)).toEqual([[0.625 - reach, 10.625 + reach]]);
    expect(along('outline', 0.25)).toEqual([]);
    expect(along('outline', 0)).toContainEqual([0, 11.25]);
  });

  it('never lets a label cover another or run off the edge, whether the box is long and thin, flat or tiny', () => {
    fc.assert(
      fc.property(
        inches(1, 36),
        inches(1, 24),
        inches(0.5, 18),
        fc.constantFrom('tape', 'mm', 'both'),
        (insideLength, insideWidth, insideDepth, lengths) => {
          const box = sizeBox({ insideLength, insideWidth, insideDepth, species: 'walnut-black' });
          const picture = drawingOf(pieceDrawing(drawnBox(box), { lengths: lengths as 'both' }));
          expect(overlaps(picture.labels)).toEqual([]);
          expect(linesThrough(picture)).toEqual([]);
          expect(hiddenArrowheads(picture)).toEqual([]);
          expect(cutOff(picture.labels, picture)).toEqual([]);
        },
      ),
      {
        numRuns: 80,
        examples: [
          [36, 1, 0.5, 'both'],
          [1, 24, 0.5, 'both'],
          [1, 1, 18, 'both'],
          [1, 1, 0.5, 'tape'],
        ],
      },
    );
  });
});
