import { expect, it } from 'vitest';
import { shopAir } from '../../../kernel-helpers/src/wood/air/shop-air.js';

const typed = { shopTemperatureC: 19, shopHumidity: 0.45 };

it('is the air of a shop that somebody works in', () => {
  expect(shopAir(typed)).toEqual({ temperatureC: 19, relativeHumidity: 0.45 });
  expect([0, 40].map((shopTemperatureC) => shopAir({ ...typed, shopTemperatureC }).temperatureC)).toEqual([0, 40]);
});

it.each<[object, string]>([
  [
    { shopTemperatureC: 66 },
    'shopTemperatureC: 66 given; possible: 0 to 40 °C (air of your shop); was it read in °F? Then write 18.9',
  ],
  [{ shopTemperatureC: -5 }, 'shopTemperatureC: -5 given; possible: 0 to 40 °C (air of your shop)'],
  [{ shopTemperatureC: '19' }, 'shopTemperatureC: "19" given; possible: a number from 0 to 40 °C'],
  [{ shopHumidity: 45 }, 'shopHumidity: 45 given; a fraction from 0.05 to 0.95 is possible, so 45 % is written 0.45'],
])('%j is asked about in one line', (bad, message) => {
  expect(() => shopAir({ ...typed, ...bad } as typeof typed)).toThrow(message);
});

it('does not guess at °F where that would be no shop either', () => {
  expect(() => shopAir({ ...typed, shopTemperatureC: 200 })).toThrow(/\(air of your shop\)$/);
});
