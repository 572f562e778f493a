import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addOwnSpecies, ownSpeciesVersions } from '../../../kernel-helpers/src/record/own/own-species.js';
import { movement } from '../../../kernel-helpers/src/wood/movement.js';
import { species } from '../../../kernel-helpers/src/wood/species.js';

const barnOak = {
  id: 'oak-from-the-barn',
  commonName: 'Oak from the barn',
  botanicalName: 'Quercus sp.',
  group: 'hardwood',
  fibreSaturation: 30,
  coefficient: {
    radial: 0.0019,
    tangential: 0.0035,
    source: 'own boards, winter to summer (invented)',
    fromMemory: false,
  },
};

let data: string;
let folder: string;
beforeEach(() => {
  data = mkdtempSync(join(tmpdir(), 'own-species-'));
  folder = join(data, 'commissions', '2026-11-25-x');
  mkdirSync(folder, { recursive: true });
});
afterEach(() => rmSync(data, { recursive: true }));

const write = (place: string, content: unknown) =>
  writeFileSync(join(place, 'own-species.json'), typeof content === 'string' ? content : JSON.stringify(content));

describe("the maker's own woods", () => {
  it('come from the shop, and the commission has the last word', () => {
    write(data, [barnOak]);
    addOwnSpecies(folder);
    expect(
      movement({ across: 10, species: 'oak-from-the-barn', ringAngle: 0, fromMoisture: 8, toMoisture: 10 }).change,
    ).toBeCloseTo(0.07, 9);
    write(folder, [{ ...barnOak, commonName: 'Oak from the other barn' }]);
    addOwnSpecies(folder);
    expect(species('oak-from-the-barn').commonName).toBe('Oak from the other barn');
  });

  it("have a digest for the record, the shop's and the commission's, so that a check can tell when they changed", () => {
    expect(ownSpeciesVersions(folder)).toEqual({});
    write(data, [barnOak]);
    const before = ownSpeciesVersions(folder);
    write(folder, [barnOak]);
    const after = ownSpeciesVersions(folder);
    expect(Object.keys(after)).toEqual(["the shop's own-species.json", 'own-species.json']);
    expect(after).toMatchObject(before);
    write(data, [{ ...barnOak, fibreSaturation: 29 }]);
    expect(ownSpeciesVersions(folder)["the shop's own-species.json"]).not.toBe(before["the shop's own-species.json"]);
  });

  it.each([
    ['{', '/own-species.json, line 1: it ends too early'],
    [
      [{ ...barnOak, id: 'walnut-black' }],
      'own-species.json, line 1, own species, entry walnut-black, field id: a published wood has this id',
    ],
    [
      [{ ...barnOak, id: 'oak-two', coefficient: { radial: 1, tangential: 1, source: 'x', fromMemory: false } }],
      'entry oak-two, field coefficient, radial: 1 given; possible: ',
    ],
  ])('are named with file, entry and field when they cannot be read (%#)', (content, message) => {
    write(folder, content);
    expect(() => addOwnSpecies(folder)).toThrow(message);
    expect(() => addOwnSpecies(folder)).toThrow('own-species.json');
  });
});
