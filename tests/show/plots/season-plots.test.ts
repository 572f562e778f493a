import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitOdds } from '../../../kernel-helpers/src/fit/fit-odds.js';
import { lidFit } from '../../../kernel-helpers/src/fit/lid-fit.js';
import { lidSensitivity } from '../../../kernel-helpers/src/fit/lid-sensitivity.js';
import { equilibriumByMonth } from '../../../kernel-helpers/src/fit/seasonal-fit.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { clearancePlot } from '../../../kernel-helpers/src/show/plots/clearance-plot.js';
import { lidSensitivityPlot } from '../../../kernel-helpers/src/show/plots/lid-sensitivity-plot.js';
import { dryingPlot, moistureYearPlot } from '../../../kernel-helpers/src/show/plots/moisture-plots.js';
import { oddsPlot } from '../../../kernel-helpers/src/show/plots/odds-plot.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { swingFollowed } from '../../../kernel-helpers/src/wood/drying/swing-followed.js';
import { elementsOf } from '../read-html.js';
import { cutOff, overlaps, pictureOf } from '../read-svg.js';

const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
});
const heating = { heatTo: 20, coolTo: 25, humidifyTo: 0.3, dehumidifyTo: 0.6 };
const air = yearOfAir({ place: 'chicago-ohare', heating });
const input = { box: box.design, species: 'walnut-black', ringAngle: 20, air, fittingMoisture: 8 };
const fit = lidFit(input);
const texts = (picture: ReturnType<typeof pictureOf>) => picture.labels.map(({ text }) => text);

describe('changes side by side', () => {
  it('name each change and what it buys, without running into each other', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('cherry-black', 'oak-northern-red', 'mahogany-true', 'redwood-old-growth'),
        fc.integer({ min: 0, max: 90 }),
        (other, ringAngle) => {
          const changes = lidSensitivity({ input: { ...input, ringAngle }, otherSpecies: [other] });
          const picture = pictureOf(lidSensitivityPlot(changes));
          for (const { what } of changes) expect(texts(picture)).toContain(what);
          expect(overlaps(picture.labels)).toEqual([]);
          expect(cutOff(picture.labels, picture)).toEqual([]);
        },
      ),
      { numRuns: 10 },
    );
  });
});

describe('odds over the width', () => {
  it('mark the aim and say what each line is', () => {
    const { narrowest, widest } = fit.window;
    const widths = [narrowest - 0.05, narrowest, fit.fittedWidth, widest, widest + 0.05];
    const odds = widths.map((width) => ({
      width,
      odds: fitOdds({ fit, species: 'walnut-black', ringAngle: 20, width, simulations: 500 }),
    }));
    const picture = pictureOf(oddsPlot(odds, fit.fittedWidth));
    expect(texts(picture)).toContain(`aim ${fit.fittedWidth.toFixed(3)} in`);
    const dashes = picture.all('[aria-label="line"]').map((line) => line.getAttribute('stroke-dasharray'));
    expect(new Set(dashes).size).toBe(2);
    expect(texts(picture)).toContain('binds in the wettest month');
    expect(texts(picture)).toContain('loses its hold in the driest month');
    expect(overlaps(picture.labels)).toEqual([]);
  });
});

describe('moisture through the year', () => {
  it('keeps its three labels apart, wherever the curves end', () => {
    for (const place of ['chicago-ohare', 'london', 'phoenix', 'singapore', 'sydney', 'yellowknife']) {
      const room = yearOfAir({ place, heating: { heatTo: 20 } });
      const follows = swingFollowed({ thickness: '1/2 in', species: 'walnut-black', air: room });
      const outdoors = equilibriumByMonth(yearOfAir({ place }));
      const picture = pictureOf(moistureYearPlot({ outdoors, follows, what: 'the lid' }));
      expect(texts(picture), place).toEqual(
        expect.arrayContaining(['wood outdoors', 'wood that followed at once', 'the lid']),
      );
      expect(overlaps(picture.labels), place).toEqual([]);
      expect(cutOff(picture.labels, picture), place).toEqual([]);
    }
  });

  it('shows a stack settling', () => {
    const drying = [0, 10, 20].map((day) => ({ day, mean: 10 - day / 20, core: 10 - day / 30, surface: 8.6 }));
    const picture = pictureOf(dryingPlot(drying, 8.5));
    expect(texts(picture)).toEqual(
      expect.arrayContaining(['mean over the thickness', 'middle of the board', 'its faces']),
    );
    expect(overlaps(picture.labels)).toEqual([]);
  });
});

describe('a lid measured later', () => {
  it('is drawn on the predicted band, and counted', () => {
    const july = fit.byMonth[6]?.clearance ?? 0;
    const plot = clearancePlot({
      fit,
      measured: [
        { date: '2027-07-20', clearance: july },
        { date: '2028-01-10', clearance: 0.2 },
      ],
    });
    const picture = pictureOf(plot);
    expect(texts(picture)).toEqual(expect.arrayContaining(['2027-07-20', '2028-01-10']));
    expect(elementsOf(plot.text, 'figcaption')[0]?.textContent).toContain('1 of 2 in the band');
  });
});
