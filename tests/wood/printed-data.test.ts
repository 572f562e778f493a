import { describe, expect, it } from 'vitest';
import { allMoistureExcluding, moistureExcluding } from '../../kernel-helpers/src/wood/drying/moisture-excluding.js';
import { allServiceMoisture, serviceMoisture } from '../../kernel-helpers/src/wood/service-moisture.js';

describe('finishes', () => {
  it('have their source, and say which values are remembered', () => {
    expect(allMoistureExcluding()).toHaveLength(88);
    expect(moistureExcluding('urethane-varnish-3-coats')).toMatchObject({
      keptOutPercent: { day1: 90, day7: 64, day14: 44 },
      fromMemory: false,
    });
    expect(moistureExcluding('shellac-3-coats')).toMatchObject({
      valuesFromMemory: ['day1', 'day7'],
      fromMemory: true,
    });
    for (const { source } of allMoistureExcluding()) expect(source).toMatch(/Forest Products Laboratory|FPL/);
  });

  it('keep out less with time, and more with a further coat', () => {
    const byFinish = new Map<string, number>();
    for (const { id, finish, coats, keptOutPercent } of allMoistureExcluding()) {
      const { day1, day7, day14 } = keptOutPercent;
      if (day1 !== null && day7 !== null) expect(day7, id).toBeLessThanOrEqual(day1);
      if (day7 !== null && day14 !== null) expect(day14, id).toBeLessThanOrEqual(day7);
      const before = byFinish.get(`${finish} ${coats - 1}`);
      if (before !== undefined) expect(day14, id).toBeGreaterThanOrEqual(before);
      byFinish.set(`${finish} ${coats}`, day14 as number);
    }
  });

  it('are named when the one asked for is not there', () => {
    expect(() => moistureExcluding('urethane')).toThrow(
      /finish: "urethane" is not in the list; nearest: .*urethane-varnish/,
    );
  });
});

describe('moisture in service', () => {
  it('has the handbook’s three regions for furniture', () => {
    const averages = ['interior-us-most', 'interior-us-dry-southwest', 'interior-us-damp-coastal'].map(
      (id) => serviceMoisture(id).averagePercent,
    );
    expect(averages).toEqual([8, 6, 11]);
  });

  it('has a source for each, low under average under high', () => {
    for (const { id, source, lowPercent = 0, averagePercent, highPercent = 30 } of allServiceMoisture()) {
      expect(source, id).toMatch(/Forest Products Laboratory/);
      expect(lowPercent, id).toBeLessThan(highPercent);
      if (averagePercent !== undefined) {
        expect(averagePercent, id).toBeGreaterThan(lowPercent);
        expect(averagePercent, id).toBeLessThan(highPercent);
      }
    }
    expect(() => serviceMoisture('interior')).toThrow(/nearest: interior-us-most/);
  });
});
