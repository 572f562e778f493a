import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lidFit } from '../../../kernel-helpers/src/fit/lid-fit.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { clearancePlot, type LidYear } from '../../../kernel-helpers/src/show/plots/clearance-plot.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { elementsOf } from '../read-html.js';
import { cutOff, overlaps, pictureOf } from '../read-svg.js';

const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
});
const walnutLid = (place: string) =>
  lidFit({
    box: box.design,
    species: 'walnut-black',
    ringAngle: 20,
    air: yearOfAir({ place, heating: { heatTo: 20, coolTo: 25, humidifyTo: 0.3, dehumidifyTo: 0.6 } }),
    fittingMoisture: 8,
  });
const fit = walnutLid('chicago-ohare');

/** Inches at a height in the picture, by the labels of the axis. */
function scaleOf(year: LidYear) {
  const picture = pictureOf(clearancePlot({ fit: year }));
  const ticks = picture
    .all('[aria-label="y-axis tick label"] text')
    .map((tick) => ({ inches: Number(tick.textContent.replace('\u2212', '-')), y: picture.place(tick).y }));
  const [a, b] = [ticks[0], ticks.at(-1)] as [(typeof ticks)[0], (typeof ticks)[0]];
  const inches = (y: number) => a.inches + ((y + 0.32 * 13 - a.y) / (b.y - a.y)) * (b.inches - a.inches);
  return { picture, inches };
}

describe('the year of a lid', () => {
  it('has a point for each month, at the clearance that was worked out', () => {
    const { picture, inches } = scaleOf(fit);
    const points = picture.all('[aria-label="dot"] circle');
    expect(points).toHaveLength(12);
    for (const [i, point] of points.entries()) {
      const { y } = picture.place(point);
      expect(inches(y)).toBeCloseTo(fit.byMonth[i]?.clearance ?? Number.NaN, 3);
    }
    const x = points.map((point) => picture.place(point).x);
    for (let i = 2; i < 12; i++)
      expect((x[i] as number) - (x[i - 1] as number)).toBeCloseTo((x[1] as number) - (x[0] as number), 1);
  });

  it('draws both limits where they lie, and says what happens beyond each', () => {
    const { picture, inches } = scaleOf(fit);
    const rules = picture.all('[aria-label="rule"] line').map((rule) => picture.number(rule, 'y1'));
    expect(rules.map((y) => Number(inches(y).toFixed(3)))).toEqual([
      fit.limits.leastClearance,
      Number(fit.limits.mostClearance.toFixed(3)),
    ]);
    const texts = picture.labels.map(({ text }) => text);
    expect(texts).toContain('binds under 0.010 in');
    expect(texts).toContain(`loses its hold over ${fit.limits.mostClearance.toFixed(3)} in`);
    expect(texts).toEqual(expect.arrayContaining(['Jan', 'Jul', 'Dec', 'nine boards in ten', 'middling board']));
  });

  it('tells in words what it shows', () => {
    const { text } = clearancePlot({ fit });
    const tightest = [...fit.byMonth].sort((a, b) => a.clearance - b.clearance)[0];
    expect(elementsOf(text, 'img')[0]?.getAttribute('alt')).toContain(`at ${tightest?.clearance.toFixed(3)} in`);
    expect(elementsOf(text, 'figcaption')[0]?.textContent).toContain(
      'Nine boards in ten stay between the two limits all year.',
    );
  });

  it('says panel or drawer where it is one', () => {
    const { text } = clearancePlot({ fit, part: 'panel' });
    expect(elementsOf(text, 'img')[0]?.getAttribute('alt')).toContain('Clearance of the panel by month');
    expect(elementsOf(text, 'figcaption')[0]?.textContent).toMatch(/^The panel is tightest/);
  });

  it("says of a drawer's gap that it shows, not that it loses its hold", () => {
    const shown = clearancePlot({ fit: { ...fit, limits: { ...fit.limits, gapOnlyShows: true } }, part: 'drawer' });
    const texts = pictureOf(shown).labels.map(({ text }) => text);
    expect(texts).toContain(`its gap shows over ${fit.limits.mostClearance.toFixed(3)} in`);
    expect(shown.text).not.toContain('hold');
  });

  it('names the months in which the band crosses a limit', () => {
    const byMonth = fit.byMonth.map((month) => (month.month === 8 ? { ...month, low: -0.01 } : month));
    expect(elementsOf(clearancePlot({ fit: { ...fit, byMonth } }).text, 'figcaption')[0]?.textContent).toContain(
      'The band crosses a limit in August.',
    );
  });

  it('keeps its labels apart and inside the picture, dry house or damp, tight lid or loose', () => {
    const places = ['chicago-ohare', 'singapore', 'phoenix', 'sydney', 'yellowknife', 'london'];
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.integer({ min: -60, max: 60 }), (place, shift) => {
        const lid = walnutLid(place);
        const by = shift / 1000;
        const byMonth = lid.byMonth.map((month) => ({
          ...month,
          clearance: month.clearance + by,
          low: month.low + by,
          high: month.high + by,
        }));
        const picture = pictureOf(clearancePlot({ fit: { ...lid, byMonth } }));
        expect(overlaps(picture.labels)).toEqual([]);
        expect(cutOff(picture.labels, picture)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('is drawn for figures no lid ever has', () => {
    const byMonth = fit.byMonth.map(({ month }) => ({ month, clearance: month * 1e6, low: -1e7, high: 1e8 }));
    expect(pictureOf(clearancePlot({ fit: { ...fit, byMonth } })).labels.length).toBeGreaterThan(12);
  });

  it('keeps them apart in whatever months the lid is tightest and loosest', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray([...Array(12).keys()], { minLength: 12 }),
        fc.integer({ min: -40, max: 60 }),
        (order, shift) => {
          const byMonth = order.map((step, i) => {
            const clearance = (step * 14 + shift) / 1000;
            return { month: i + 1, clearance, low: clearance - 0.012, high: clearance + 0.012 };
          });
          const picture = pictureOf(
            clearancePlot({ fit: { byMonth, limits: { leastClearance: 0.01, mostClearance: 0.15 } } }),
          );
          expect(overlaps(picture.labels)).toEqual([]);
          expect(cutOff(picture.labels, picture)).toEqual([]);
        },
      ),
      { numRuns: 150 },
    );
  });
});
