import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizeBox } from '../../kernel-helpers/src/box/size-box.js';
import { parseLength } from '../../kernel-helpers/src/measure/length.js';
import { boxDrawing } from '../../kernel-helpers/src/show/box-drawing.js';
import { cutOff, overlaps, pictureOf } from './read-svg.js';

const teaChest = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
  proud: '1/8 in',
});

const inches = (least: number, most: number) =>
  fc.integer({ min: least * 64, max: most * 64 }).map((sixtyFourths) => sixtyFourths / 64);

describe('the drawing of a box', () => {
  it('gives the sizes a maker measures, in tape fractions', () => {
    const texts = pictureOf(boxDrawing(teaChest)).labels.map(({ text }) => text);
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
        const { all, number, labels } = pictureOf(boxDrawing(box));
        const sizes = labels
          .filter(({ text }) => /\d/.test(text))
          .map(({ text }) => parseLength(text.replace(/^[a-z]+ /, '')));
        // Each size draws two witness lines, its own line, and two ticks.
        const lines = all('line')
          .slice(4)
          .map((each) => Math.hypot(number(each, 'x2') - number(each, 'x1'), number(each, 'y2') - number(each, 'y1')));
        const drawn = sizes.map((_, i) => lines[i * 5 + 2] as number);
        const scale = (drawn[0] as number) / (sizes[0] as number);
        for (const [i, size] of sizes.entries()) expect((drawn[i] as number) / size / scale).toBeCloseTo(1, 2);
      }),
      { numRuns: 60 },
    );
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
          const picture = pictureOf(boxDrawing(box, { lengths: lengths as 'both' }));
          expect(overlaps(picture.labels)).toEqual([]);
          expect(cutOff(picture.labels, picture)).toEqual([]);
        },
      ),
      {
        numRuns: 150,
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
