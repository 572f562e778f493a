/**
 * `npm run bench`, second part: how long wood takes to work out, as medians, and how the time grows.
 */
import { fitOdds } from '../../kernel-helpers/src/fit/fit-odds.js';
import { lidFit } from '../../kernel-helpers/src/fit/lid-fit.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { yearOfAir } from '../../kernel-helpers/src/wood/air/air.js';
import { dailyAir } from '../../kernel-helpers/src/wood/air/daily-air.js';
import { conditionsOf } from '../../kernel-helpers/src/wood/drying/board-in-air.js';
import { moistureThroughTime } from '../../kernel-helpers/src/wood/drying/drying.js';
import { Slab } from '../../kernel-helpers/src/wood/drying/slab.js';
import { medianOf, say } from './timing.js';

const months = yearOfAir({
  place: 'chicago-ohare',
  heating: { heatTo: 20, coolTo: 25, humidifyTo: 0.3, dehumidifyTo: 0.6 },
});
const year = dailyAir({ year: months });
const board = { thickness: '1/2 in', species: 'walnut-black', startMoisture: 8 };
const years = (count: number) =>
  Array.from({ length: count }, (_, index) => year.map((day) => ({ ...day, day: day.day + 365 * index }))).flat();
const dry = (count: number) => moistureThroughTime({ ...board, air: years(count) });

dry(1);
say(
  'a year of daily air through one board (aim: 5)',
  medianOf(15, () => dry(1)),
);
for (const count of [2, 4, 8])
  say(
    `  ${count} years through one board`,
    medianOf(7, () => dry(count)),
  );
for (const count of [2, 4, 8])
  say(
    `  a year through ${count} boards`,
    medianOf(7, () => Array.from({ length: count }, () => dry(1))),
  );

const face = { halfThickness: 0.00635, specificGravity: 0.55, finishResistance: 0, diffusionFactor: 1 };
const inCells = (cells: number) => {
  const slab = new Slab({
    halfThickness: face.halfThickness,
    content: () => 8,
    cells,
    at: (day) => conditionsOf(face, 20, 0.45 + 0.15 * Math.sin((2 * Math.PI * day) / 365)),
  });
  for (let day = 1; day <= 365; day++) slab.advance(day);
};
for (const cells of [28, 56, 112, 224])
  say(
    `  a year through one board in ${cells} cells`,
    medianOf(7, () => inCells(cells)),
  );

const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
});
const lid = { box: box.design, species: 'walnut-black', ringAngle: 20, air: months, fittingMoisture: 8 };
const fit = lidFit(lid);
const odds = (simulations: number) => fitOdds({ fit, species: 'walnut-black', ringAngle: 20, simulations });
odds(1000);
say(
  'a lid through its twelve months',
  medianOf(15, () => lidFit(lid)),
);
say(
  '100,000 simulated fits (aim: 150)',
  medianOf(9, () => odds(100_000)),
);
for (const count of [200_000, 400_000])
  say(
    `  ${count.toLocaleString('en')} simulated fits`,
    medianOf(5, () => odds(count)),
  );
