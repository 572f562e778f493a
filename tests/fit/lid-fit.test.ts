import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LidFitInput, lidFit } from '../../kernel-helpers/src/fit/lid-fit.js';
import { seasonalFindings } from '../../kernel-helpers/src/fit/seasonal-fit.js';
import { parseLength } from '../../kernel-helpers/src/measure/length.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { yearOfAir } from '../../kernel-helpers/src/wood/air/air.js';

const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
});
const heating = { heatTo: 20, humidifyTo: 0.3, coolTo: 25, dehumidifyTo: 0.6 };
const usual: LidFitInput = {
  box: box.design,
  species: 'walnut-black',
  ringAngle: 20,
  air: yearOfAir({ place: 'chicago-ohare', heating }),
  fittingMoisture: 8,
};

const anyFit = fc.record({
  species: fc.constantFrom('walnut-black', 'cherry-black', 'maple-sugar', 'mahogany-true', 'pine-eastern-white'),
  ringAngle: fc.integer({ min: 0, max: 90 }),
  place: fc.constantFrom('chicago-ohare', 'minneapolis', 'phoenix', 'london', 'singapore'),
  fittingMoisture: fc.integer({ min: 5, max: 13 }),
});

describe('a sliding lid through the year', () => {
  it('worked by hand: opening, and the play in the wettest month', () => {
    const fit = lidFit(usual);
    expect(fit.opening).toBe(6.75); // 6 1/4 + 2 x 1/4
    expect(fit.limits.mostClearance).toBe(7 / 32); // the smaller of 1/4 (half engaged, both sides) and 1/4 - 1/32 (pushed aside)
    const wettest = fit.byMonth[fit.wettest - 1];
    // C at 20 degrees = 0.00274 cos2 20 + 0.0019 sin2 20 = 0.0026417
    const swelling = fit.fittedWidth * 0.0026417 * ((wettest?.moisture ?? 0) - 8);
    expect(wettest?.clearance).toBeCloseTo(6.75 - fit.fittedWidth - swelling, 5);
  });

  it('worked by hand: the most play, by the hold of the centred tongue and by that of one pushed aside', () => {
    const most = (change: Partial<LidFitInput>) => lidFit({ ...usual, ...change }).limits.mostClearance;
    expect(most({ leastEngagement: 0.75 })).toBe(1 / 8); // 2 x 1/4 x 1/4
    expect(most({ leastEngagement: 0.25 })).toBe(7 / 32); // 3/8 centred; 1/4 - 1/32 pushed aside
    expect(most({ leastHold: '1/8 in' })).toBe(1 / 8);
  });

  it.each([
    [[6, 8, 10], 0.01, 'ok'],
    [[6, 8, 12], 0.001, 'stop'],
    [[8], 0, 'stop'],
  ])('with months at %j %% and %f in over the tongue at 8 %%: %s', (moistures, tongueRoom, verdict) => {
    const months = moistures.map((moisture, index) => ({ month: index + 1, moisture }));
    const { findings } = lidFit({ ...usual, moistures: months, tongueRoom });
    expect(findings.find(({ rule }) => rule === 'lid: room over the tongue')?.verdict).toBe(verdict);
  });

  it('worked by hand: the tongue of a flat-sawn lid thickens from ring to ring', () => {
    const { byMonth, fittedTongue } = lidFit({
      ...usual,
      ringAngle: 0,
      moistures: [
        { month: 1, moisture: 8 },
        { month: 7, moisture: 12 },
      ],
    });
    expect(fittedTongue).toBe(0.24); // 1/4 less 0.010
    expect(byMonth[1]?.tongueRoom).toBeCloseTo(0.01 - 0.24 * 0.0019 * 4, 9); // radial coefficient of walnut, 4 % wetter
  });

  it.each([
    [1 / 64 + 1e-6, 'ok'],
    [1 / 64, 'ok'],
    [1 / 64 - 1e-6, 'watch'],
    [1 / 128, 'watch'],
    [0, 'watch'],
    [-1e-6, 'stop'],
  ])('a window %f in wide is %s', (room, verdict) => {
    const words = { piece: 'lid', tight: 'it sticks', loose: 'it falls out' };
    const fit = { ...lidFit(usual), window: { narrowest: 6, widest: 6 + room } };
    expect(seasonalFindings(fit, words, '', usual)[0]?.verdict).toBe(verdict);
  });

  it('has the limits of play that the lesson tells of', () => {
    const lesson = readFileSync(new URL('../../worksheets/lessons/04-lid-july-january.ipynb', import.meta.url), 'utf8');
    const [, groove, middle, pushed] =
      /grooves (\S+) in deep that is (\S+) in and (\S+) in: the second decides/.exec(lesson) ?? [];
    const box = { insideWidth: 6.25, lidGrooveDepth: parseLength(`${groove} in`), tongueThickness: 0.25 };
    const most = (limits: Partial<LidFitInput>) => lidFit({ ...usual, box, ...limits }).limits.mostClearance;
    expect(most({ leastHold: 0 })).toBe(parseLength(`${middle} in`));
    expect(most({ leastEngagement: 0 })).toBe(parseLength(`${pushed} in`));
    expect(most({})).toBe(parseLength(`${pushed} in`));
  });

  it('keeps both limits, with their doubt, for the width it aims at', () => {
    fc.assert(
      fc.property(anyFit, ({ place, ...lid }) => {
        const fit = lidFit({ ...usual, ...lid, air: yearOfAir({ place, heating }) });
        fc.pre(fit.window.narrowest <= fit.window.widest);
        expect(fit.fittedWidth).toBeLessThanOrEqual(fit.window.widest);
        expect(fit.fittedWidth).toBeGreaterThanOrEqual(fit.window.narrowest);
        for (const { low, high, clearance } of fit.byMonth) {
          expect(low).toBeGreaterThanOrEqual(fit.limits.leastClearance - 1e-9);
          expect(high).toBeLessThanOrEqual(fit.limits.mostClearance + 1e-9);
          expect(low).toBeLessThanOrEqual(clearance);
          expect(high).toBeGreaterThanOrEqual(clearance);
        }
        expect(fit.findings.slice(0, 3).some(({ verdict }) => verdict === 'stop')).toBe(false);
      }),
    );
  });

  it('has a wider window in quarter-sawn wood than in flat-sawn', () => {
    const room = (ringAngle: number) => {
      const { window } = lidFit({ ...usual, ringAngle });
      return window.widest - window.narrowest;
    };
    expect(room(90)).toBeGreaterThan(room(0));
  });

  it('is stopped where no width fits the whole year', () => {
    const wide = sizeBox({ insideLength: '20 in', insideWidth: '20 in', insideDepth: '4 in', species: 'walnut-black' });
    const fit = lidFit({
      ...usual,
      box: wide.design,
      ringAngle: 0,
      air: yearOfAir({ place: 'minneapolis', heating: { heatTo: 20 } }),
    });
    expect(fit.window.narrowest).toBeGreaterThan(fit.window.widest);
    expect(fit.findings[0]).toMatchObject({ rule: 'lid: a width that fits the whole year', verdict: 'stop' });
  });

  it.each([
    [{ ringAngle: 120 }, 'ringAngle: 120 given; possible: a number from 0 to 90 degrees'],
    [{ fittingMoisture: 35 }, 'fittingMoisture: 35 given; possible: a number from 3 to 20 %'],
    [{ species: 'oka' }, 'species: "oka" given; '],
    [{ leastClearance: '2 in' }, 'leastClearance: "2 in" given; possible: 0 in to 1/4 in'],
    [{ leastEngagement: 50 }, 'leastEngagement: 50 given; possible: a number from 0 to 1'],
  ])('refuses %j in one line', (bad, message) => {
    expect(() => lidFit({ ...usual, ...bad })).toThrow(message);
  });
});
