import { describe, expect, it } from 'vitest';
import { bindingMonths } from '../../kernel-helpers/src/fit/binding-months.js';
import { lidFit } from '../../kernel-helpers/src/fit/lid-fit.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { yearOfAir } from '../../kernel-helpers/src/wood/air/air.js';

const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
});
const air = yearOfAir({ place: 'chicago-ohare', heating: { heatTo: 20, humidifyTo: 0.3 } });
const fit = lidFit({ box: box.design, species: 'walnut-black', ringAngle: 20, air, fittingMoisture: 8 });

describe('a lid planed wider than it should be', () => {
  it('binds in no month at any width in the window', () => {
    for (const width of [fit.window.narrowest, fit.fittedWidth, fit.window.widest])
      expect(bindingMonths({ fit, width })).toEqual({ middling: [], lively: [] });
  });

  it('binds in the wettest month first, of the board that moves most first, then in more months and of most boards', () => {
    const at = (over: number) => bindingMonths({ fit, width: fit.window.widest + over });
    expect(at(1e-4)).toEqual({ middling: [], lively: [fit.wettest] });
    expect(at(1 / 32).middling).toContain(fit.wettest);
    expect(at(1 / 16).middling.length).toBeGreaterThan(at(1 / 32).middling.length);
    expect(at(1).middling).toHaveLength(12);
  });

  it('agrees with the play of a lid that is planed to that width', () => {
    const strain = 0.0026417 * ((fit.byMonth[fit.wettest - 1]?.moisture ?? 0) - 8); // coefficient at 20 degrees
    const leastThatFits = (fit.opening - fit.limits.leastClearance) / (1 + strain);
    expect(bindingMonths({ fit, width: leastThatFits - 1e-4 }).middling).not.toContain(fit.wettest);
    expect(bindingMonths({ fit, width: leastThatFits + 1e-4 }).middling).toContain(fit.wettest);
  });
});
