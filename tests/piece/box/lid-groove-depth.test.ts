import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lidFit } from '../../../kernel-helpers/src/fit/lid-fit.js';
import { lidGrooveDepthFor } from '../../../kernel-helpers/src/piece/box/lid-groove-depth.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';

const air = yearOfAir({
  place: 'chicago-ohare',
  heating: { heatTo: 20, humidifyTo: 0.3, coolTo: 25, dehumidifyTo: 0.6 },
});
const grooved = { tongueThickness: 0.25, stockThickness: 0.625, species: 'walnut-black', air };

describe('grooves of a lid whose depth is left to its year', () => {
  it('stay 1/4 in deep for a tea chest, and go deeper for a chest 14 in wide', () => {
    expect(lidGrooveDepthFor({ ...grooved, insideWidth: 6.25 })).toBe(1 / 4);
    expect(lidGrooveDepthFor({ ...grooved, insideWidth: 14 })).toBe(5 / 16);
  });

  it('never take more than half the board, even where the lid asks for more', () => {
    expect(lidGrooveDepthFor({ ...grooved, insideWidth: 30 })).toBe(5 / 16);
    expect(lidGrooveDepthFor({ ...grooved, insideWidth: 6, stockThickness: 0.375 })).toBe(3 / 16);
  });

  it('are the least sixteenth that leaves a width to plane to, flat-sawn and planed on any day of the year', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 32, max: 320 }),
        fc.double({ min: 6.5, max: 10.5, noNaN: true }),
        (marks, moisture) => {
          const insideWidth = marks / 16;
          const depth = lidGrooveDepthFor({ ...grooved, insideWidth, stockThickness: 1.5 });
          const room = (lidGrooveDepth: number) => {
            const box = { ...grooved, insideWidth, lidGrooveDepth };
            const fit = lidFit({ box, species: 'walnut-black', ringAngle: 0, air, fittingMoisture: moisture });
            return fit.window.widest - fit.window.narrowest;
          };
          // What another day of fitting moves the limits by is a fraction of 1/64 in.
          if (depth < 0.75) expect(room(depth)).toBeGreaterThan(1 / 64 - 0.004);
          if (depth > 0.25) expect(room(depth - 1 / 16)).toBeLessThan(1 / 64 + 0.004);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('are what a box is sized with when nothing is typed for them', () => {
    const chest = { insideLength: '18 in', insideWidth: '14 in', insideDepth: '10 in', species: 'walnut-black', air };
    expect(sizeBox({ ...chest, lidGrooveDepth: '' })).toEqual(sizeBox({ ...chest, lidGrooveDepth: '5/16 in' }));
    expect(sizeBox(chest)).toEqual(sizeBox({ ...chest, lidGrooveDepth: '5/16 in' }));
  });
});
