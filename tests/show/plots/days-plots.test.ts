import { describe, expect, it } from 'vitest';
import { ofHundred } from '../../../kernel-helpers/src/measure/of-hundred.js';
import { estimateCost } from '../../../kernel-helpers/src/money/cost.js';
import { estimateHours } from '../../../kernel-helpers/src/money/hours.js';
import { countWork } from '../../../kernel-helpers/src/money/operations.js';
import { priceSensitivity } from '../../../kernel-helpers/src/money/price-sensitivity.js';
import { quote } from '../../../kernel-helpers/src/money/quote.js';
import { hoursPlot } from '../../../kernel-helpers/src/show/plots/hours-plot.js';
import { priceTornadoPlot } from '../../../kernel-helpers/src/show/plots/price-tornado-plot.js';
import { promisePlot } from '../../../kernel-helpers/src/show/plots/promise-plot.js';
import { scheduleChart } from '../../../kernel-helpers/src/show/plots/schedule-chart.js';
import { box, dovetails, fingers, keyedMitre } from '../../money/a-box.js';
import { boxDays, calendar } from '../a-schedule.js';
import { elementsOf } from '../read-html.js';
import { cutOff, overlaps, pictureOf } from '../read-svg.js';

const counts = countWork({ piece: box, joint: dovetails, boards: 2, letters: 7, coats: 3 });
const hours = estimateHours({ counts });
const spending = {
  currency: 'USD',
  boards: [{ mark: 'A', thickness: 1, width: 6, length: 96, price: 14.5 }],
  otherMaterials: [{ what: 'Finish', price: 6 }],
  outsideWork: [{ what: 'Knob', price: 18 }],
  hours: hours.mean,
  hourlyRate: 40,
  overheadPerYear: 12000,
  billableHoursPerYear: 1000,
  contingency: 0.05,
};
const terms = { margin: 0.25, deposit: 0.5, date: '2026-12-20', validDays: 30 };
const changes = priceSensitivity({ spending, terms, hours });
const planned = quote({ ...terms, cost: estimateCost(spending).total, roundTo: 0.01 }).net;
const altOf = (html: string) => elementsOf(html, 'img')[0]?.getAttribute('alt') ?? '';

describe.each([
  ['hours by operation', hoursPlot(hours)],
  ['what moves the price', priceTornadoPlot(changes, planned)],
  ...['2026-12-20', '2027-01-18', '2027-02-12', '2027-08-01'].flatMap((promised) => [
    [`the odds of ${promised}`, promisePlot(boxDays(promised))] as const,
    [`the steps up to ${promised}`, scheduleChart(boxDays(promised), calendar)] as const,
  ]),
  ['the steps of a finger joint', scheduleChart(boxDays('2027-02-12', fingers), calendar)],
  ['the steps of a keyed mitre', scheduleChart(boxDays('2027-02-12', keyedMitre), calendar)],
] as const)('%s', (_, shown) => {
  it('keeps its labels apart and inside the picture', () => {
    const picture = pictureOf(shown);
    expect(overlaps(picture.labels)).toEqual([]);
    expect(cutOff(picture.labels, picture)).toEqual([]);
  });
});

describe('the chart of the days', () => {
  const made = boxDays('2027-02-12');

  it('has a bar for each step, full where it decides the finish and hollow where it does not', () => {
    const fingered = boxDays('2027-02-12', fingers);
    const beside = fingered.steps.filter(({ critical }) => !critical);
    expect(beside.length).toBeGreaterThan(0);
    const shown = scheduleChart(fingered, calendar);
    const bars = pictureOf(shown).all('[aria-label="bar"] rect');
    const filled = (fill: string) => bars.filter((bar) => bar.getAttribute('fill') === fill);
    expect(filled('#1a1a1a')).toHaveLength(fingered.criticalPath.length);
    expect(filled('white')).toHaveLength(beside.length);
    expect(altOf(shown.text).match(/\(fits in between\)/g)).toHaveLength(beside.length);
  });

  it('tells in words when each step is', () => {
    const alt = altOf(scheduleChart(made, calendar).text);
    for (const { name, start } of made.steps) expect(alt).toContain(`${name} ${start}`);
  });
});

describe('the odds of the promise', () => {
  it('are told in words', () => {
    const made = boxDays('2027-01-18');
    expect(altOf(promisePlot(made).text)).toContain(`${ofHundred(made.odds)} of a hundred by the promised day`);
  });
});

describe('what moves the price', () => {
  it('has a bar for each figure, around the price as planned', () => {
    const picture = pictureOf(priceTornadoPlot(changes, planned));
    expect(picture.all('[aria-label="bar"] rect')).toHaveLength(changes.length);
    const line = picture.number(picture.all('[aria-label="rule"] line')[0] as never, 'x1');
    for (const bar of picture.all('[aria-label="bar"] rect')) {
      const left = picture.number(bar, 'x');
      expect(line).toBeGreaterThanOrEqual(left - 0.5);
      expect(line).toBeLessThanOrEqual(left + picture.number(bar, 'width') + 0.5);
    }
  });
});
