import { describe, expect, test } from 'vitest';
import { allGrits, grit } from '../../kernel-helpers/src/surface/finish/grits.js';

/*
 * Average grain of coated abrasives, micrometres, against print other than the one each figure was taken from.
 *
 * Chart: a finishing supplier's comparison chart of CAMI, P and micron grades (read), rounded to whole micrometres and, for the coarse
 * grades, to tens. Table: a public reference table of sizes and units, sandpaper grades (read). Endpoints: a general reference page on
 * grit charts (read): FEPA P12 1815, P240 58.4, P2500 8.4; macrogrits 68 to 1815.
 */
describe('grain sizes of FEPA P grades (ISO 6344)', () => {
  test.each([
    ['P40', 425],
    ['P50', 336],
    ['P60', 270],
    ['P80', 200],
    ['P100', 162],
    ['P120', 125],
  ])('%s on the chart is %i', (id, microns) => {
    // The table's figures are whole micrometres; the chart rounds P60 and P80 to tens.
    expect(Math.abs(grit(id).microns - microns)).toBeLessThanOrEqual(1);
  });

  test.each([
    ['P12', 1815, 0],
    ['P220', 68, 0],
    // 60 on the chart: publications part by under 3 % here.
    ['P240', 58.4, 0.03],
    ['P2500', 8.4, 0.06],
  ])('%s on the reference page is %f', (id, microns, apart) => {
    expect(Math.abs(grit(id).microns / microns - 1)).toBeLessThanOrEqual(apart);
  });

  test('each finer grade has a smaller grain', () => {
    const grades = allGrits().filter(({ system }) => system === 'FEPA P');
    const byName = [...grades].sort((a, b) => Number(a.id.slice(1)) - Number(b.id.slice(1)));
    expect(grades.map(({ id }) => id)).toEqual(byName.map(({ id }) => id));
    expect(byName.every(({ microns }, i) => i === 0 || microns < (byName[i - 1]?.microns ?? 0))).toBe(true);
  });

  test('remembered figures say so', () => {
    expect(allGrits().filter(({ fromMemory, source }) => fromMemory !== /memory/.test(source))).toEqual([]);
  });
});
