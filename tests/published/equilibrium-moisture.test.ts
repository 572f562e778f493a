import { describe, expect, it } from 'vitest';
import { equilibriumMoisture, humidityFor } from '../../kernel-helpers/src/wood/emc.js';
import table from './wood-handbook-table-4-2.json';

/**
 * Wood Handbook FPL-GTR-190 (2010), table 4-2: 342 printed cells, 30 to 200 °F, 5 to 95 % relative humidity.
 * Tolerance 0.06: the table is printed to 0.1 (so 0.05), and the Celsius constants are themselves rounded from the
 * Fahrenheit ones the table was made with.
 */
describe('Wood Handbook FPL-GTR-190, table 4-2', () => {
  const cells = table.rows.flatMap(({ fahrenheit, moisture }) =>
    moisture.map((printed, column) => ({
      fahrenheit,
      humidity: table.relativeHumidityPercent[column] as number,
      printed,
    })),
  );

  it('is met in every one of its 342 cells', () => {
    expect(cells).toHaveLength(342);
    const differences = cells.map(({ fahrenheit, humidity, printed }) => ({
      at: `${fahrenheit} F, ${humidity} %`,
      off: Math.abs(equilibriumMoisture({ temperatureF: fahrenheit, relativeHumidity: humidity / 100 }) - printed),
    }));
    const worst = differences.reduce((a, b) => (b.off > a.off ? b : a));
    const mean = differences.reduce((sum, { off }) => sum + off, 0) / differences.length;
    console.log(
      `equilibrium moisture against table 4-2: largest ${worst.off.toFixed(3)} at ${worst.at}, mean ${mean.toFixed(3)}`,
    );
    expect(worst.off, worst.at).toBeLessThanOrEqual(0.06);
    expect(mean).toBeLessThanOrEqual(0.03);
  });

  it('and the other way round: the humidity for each printed moisture, within what its print allows', () => {
    for (const { fahrenheit, humidity, printed } of cells) {
      const back = humidityFor({ moisture: printed, temperatureF: fahrenheit });
      const at = (h: number) => equilibriumMoisture({ temperatureF: fahrenheit, relativeHumidity: h });
      // 0.06 of moisture, as above, in humidity: over the slope at the printed cell.
      const slope = (at(humidity / 100 + 0.005) - at(humidity / 100 - 0.005)) / 0.01;
      expect(Math.abs(back - humidity / 100), `${fahrenheit} F, ${humidity} %`).toBeLessThan(0.07 / slope);
    }
  });
});

describe('wood and air, over the whole range', () => {
  it('rises with humidity at every temperature', () => {
    for (let temperatureC = -20; temperatureC <= 90; temperatureC += 10)
      for (let percent = 0; percent < 100; percent += 2) {
        const at = (h: number) => equilibriumMoisture({ temperatureC, relativeHumidity: h / 100 });
        expect(at(percent + 2)).toBeGreaterThan(at(percent));
      }
  });

  it('tells a humidity of 45 from one of 0.45', () => {
    expect(() => equilibriumMoisture({ temperatureC: 20, relativeHumidity: 45 })).toThrow(
      'relativeHumidity: 45 given; a fraction from 0 to 1 is possible, so 45 % is written 0.45',
    );
  });
});
