import { describe, expect, it } from 'vitest';
import { movingPart, panelFit } from '../../kernel-helpers/src/fit/panel-fits.js';
import { roomFindings } from '../../kernel-helpers/src/fit/room-findings.js';
import { humidityFor } from '../../kernel-helpers/src/wood/emc.js';

/** A room in which wood comes to these moistures, six months each. */
const room = (driest: number, wettest: number) =>
  Array.from({ length: 12 }, (_, index) => ({
    month: index + 1,
    temperatureC: 20,
    relativeHumidity: humidityFor({ moisture: index >= 3 && index < 9 ? wettest : driest, temperatureC: 20 }),
  }));
const wood = { species: 'cherry-black', ringAngle: 0, fittingMoisture: 8 };
const usual = { ...wood, air: room(7, 10) };
const fit = panelFit({ ...usual, between: '12 in', grooveDepth: '1/4 in' });
const panel = movingPart('panel', 1, usual, fit);
const verdictIn = (driest: number, wettest: number, more: object = {}) =>
  roomFindings({ moves: [panel], air: room(driest, wettest), ...more })[0]?.verdict;

describe('a panel sized for one room and sent to another', () => {
  it('fits the room it was sized for, and a calmer one', () => {
    expect(fit.findings.every(({ verdict }) => verdict === 'ok')).toBe(true);
    expect([verdictIn(7, 10), verdictIn(7.5, 9)]).toEqual(['ok', 'ok']);
  });

  it('in a wetter or drier one than it can bear is a stop that says to size again, and for which width', () => {
    // From 8 to 13 %: 12.4 x 5 x 0.00248 = 0.15 in, more than all the room left.
    const [wet] = roomFindings({ moves: [panel], air: room(12.9, 13.1) });
    expect(wet?.verdict).toBe('stop');
    expect(wet?.change).toContain('size again: type this room in sheet 02');
    // 12 1/2 less 1/64, over what nine boards in ten swell at most.
    const [, widest] =
      /for ([\d.]+) in .* to ([\d.]+) in/
        .exec(wet?.change ?? '')
        ?.slice(1)
        .map(Number) ?? [];
    expect(widest).toBeCloseTo((12.5 - 1 / 64) / (1 + 5.1 * 0.00248 * 1.287858), 3);
    expect(verdictIn(3, 3.2)).toBe('stop');
  });

  it('that it bears only late, under its finish, is a watch', () => {
    const wave = Array.from({ length: 12 }, (_, index) => ({
      month: index + 1,
      temperatureC: 20,
      relativeHumidity: humidityFor({ moisture: 8.5 - 3.1 * Math.cos((index * Math.PI) / 6), temperatureC: 20 }),
    }));
    const of = (finish?: string) => roomFindings({ moves: [panel], air: wave, finish })[0];
    expect(of()?.verdict).toBe('stop');
    expect(of('urethane-varnish-6-coats')?.verdict).toBe('watch');
    expect(of('urethane-varnish-6-coats')?.figures).toContain('late, under its finish');
  });
});

it('what it was fitted at is held against the moisture that the stack settles at', () => {
  const said = (settlesAt: number) => roomFindings({ moves: [panel], air: room(7, 10), stack: { settlesAt } })[1];
  expect(said(8.5)).toMatchObject({ rule: 'panel: fitted at the moisture of its stack', verdict: 'ok' });
  expect(said(11)).toMatchObject({ verdict: 'watch' });
});

it('a piece with nothing that moves has nothing to say', () => {
  expect(roomFindings({ moves: [], air: room(6, 10) })).toEqual([]);
});
