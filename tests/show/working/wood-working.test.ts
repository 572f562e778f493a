import { describe, expect, it } from 'vitest';
import type { DisplayItem } from '../../../kernel-helpers/src/show/kit/display.js';
import { diffusivityWorking } from '../../../kernel-helpers/src/show/working/diffusivity-working.js';
import { movementWorking } from '../../../kernel-helpers/src/show/working/movement-working.js';
import { diffusivity } from '../../../kernel-helpers/src/wood/drying/diffusivity.js';
import { movement } from '../../../kernel-helpers/src/wood/movement.js';

const cherry = { across: 9.25, species: 'cherry-black', fromMoisture: 8, toMoisture: 12 };
const formulas = (shown: DisplayItem[]) => shown.filter(({ mime }) => mime === 'text/latex').map(({ text }) => text);

describe('a movement worked', () => {
  it("is the handbook's short form alone for a flat-sawn or a quarter-sawn board", () => {
    for (const ringAngle of [0, 90]) expect(formulas(movementWorking({ ...cherry, ringAngle }))).toHaveLength(1);
  });

  it('turns the coefficient to the ring angle first, and comes to the movement itself', () => {
    const move = { ...cherry, ringAngle: 20 };
    const [turned, moved] = formulas(movementWorking(move, { digits: 3 }));
    expect(turned).toContain(`${movement(move).method.figure.toPrecision(4)}`);
    expect(moved).toContain(movement(move).change.toPrecision(3));
  });

  it('goes by the shrinkage where a moisture lies outside 6 to 14 %', () => {
    const move = { ...cherry, ringAngle: 0, toMoisture: 16 };
    const shown = formulas(movementWorking(move, { digits: 3 }));
    expect(shown).toHaveLength(2);
    expect(shown[0]).toContain(String(Number(movement(move).method.figure.toPrecision(4))));
    expect(shown[1]).toContain(movement(move).change.toPrecision(3));
  });
});

it('the spread of water in wood is worked from the cell wall and its hollow', () => {
  const wood = { moisture: 10, temperatureC: 20, specificGravity: 0.5 };
  const shown = formulas(diffusivityWorking(wood));
  expect(shown).toHaveLength(3);
  expect(diffusivityWorking(wood).at(-1)?.text).toMatch(/\d\.\d+ × 10⁻¹² m²\/s/);
  expect(shown[2]).toContain(diffusivity(wood).toPrecision(3).split('e')[0]);
});
