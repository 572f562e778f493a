import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { widthWindow } from '../../../kernel-helpers/src/show/plots/width-window.js';
import { elementsOf } from '../read-html.js';
import { cutOff, overlaps, pictureOf } from '../read-svg.js';

const lid = { fittedWidth: 6.65625, window: { narrowest: 6.572, widest: 6.672 } };

describe('the widths that may be planed today', () => {
  it('stand on a tape, each at its place', () => {
    const picture = pictureOf(widthWindow(lid));
    const at = (text: string) => {
      const label = picture.labels.find((each) => each.text === text);
      return ((label?.left ?? Number.NaN) + (label?.right ?? Number.NaN)) / 2;
    };
    const inches = (x: number) => 6.5625 + ((x - at('6 9/16')) / (at('6 11/16') - at('6 9/16'))) * 0.125;
    const bar = picture.all('rect')[1];
    const [left, wide] = [bar ? picture.number(bar, 'x') : Number.NaN, bar ? picture.number(bar, 'width') : Number.NaN];
    expect(inches(left)).toBeCloseTo(6.572, 3);
    expect(inches(left + wide)).toBeCloseTo(6.672, 3);
    expect(inches(at('aim: 6.656 in'))).toBeCloseTo(6.65625, 3);
  });

  it('are told in words, by caliper and by tape', () => {
    expect(elementsOf(widthWindow(lid).text, 'figcaption')[0]?.textContent).toBe(
      'Plane the lid between 6.572 in and 6.672 in wide today. Aim for 6.656 in by caliper; 6 21/32 in on the tape is to the hair.',
    );
  });

  it('are none when the narrowest is above the widest, and the picture says so', () => {
    const shown = widthWindow({ fittedWidth: 6.705, window: { narrowest: 6.72, widest: 6.69 } });
    expect(elementsOf(shown.text, 'figcaption')[0]?.textContent).toBe(
      'No width will do: to run in the wettest month the lid may be 6.690 in at most, to hold in the driest it must be 6.720 in at least.',
    );
    expect(pictureOf(shown).labels.map(({ text }) => text)).toContain('no width will do');
  });

  it('never cover one another, in a narrow window or a wide one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1000, max: 24_000 }),
        fc.integer({ min: -100, max: 800 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (start, width, part) => {
          const narrowest = start / 1000;
          const widest = (start + width) / 1000;
          const fittedWidth = narrowest + part * (widest - narrowest);
          const picture = pictureOf(widthWindow({ fittedWidth, window: { narrowest, widest } }));
          expect(overlaps(picture.labels)).toEqual([]);
          expect(cutOff(picture.labels, picture)).toEqual([]);
        },
      ),
    );
  });
});
