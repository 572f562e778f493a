import { describe, expect, it } from 'vitest';
import { checkParameters } from '../../kernel-helpers/src/measure/sheet-parameters.js';

const parameters = {
  lagging: false,
  otherBoardPrice: 9.5,
  compareWith: ['cherry-black'],
  boardsFile: '',
  setUp: { guard: 'on' },
  lidStock: '5/8 in',
  seed: 1,
  margin: 0.2,
  stackMoisture: '',
};
const expected = {
  yesOrNo: ['lagging'],
  money: ['otherBoardPrice'],
  list: ['compareWith'],
  text: ['boardsFile'],
  group: ['setUp'],
  length: ['lidStock'],
  number: ['seed'],
  share: ['margin'],
  reading: ['stackMoisture'],
} satisfies Parameters<typeof checkParameters<typeof parameters>>[1];

describe('the parameters of a sheet', () => {
  it('pass when each is what it should be', () => {
    expect(() => checkParameters(parameters, expected)).not.toThrow();
  });

  it.each([
    [{ lagging: 'false' }, 'lagging: "false" given; possible: true or false, without quotation marks'],
    [{ lagging: 0 }, 'lagging: 0 given; possible: true or false'],
    [{ otherBoardPrice: -1 }, 'otherBoardPrice: -1 given; possible: a number from 0 to'],
    [{ otherBoardPrice: '9.5' }, 'otherBoardPrice: "9.5" given; possible: a number'],
    [{ compareWith: 'cherry-black' }, 'compareWith: "cherry-black" given; possible: a list in square brackets'],
    [{ boardsFile: 0 }, 'boardsFile: 0 given; possible: words in quotation marks'],
    [{ setUp: ['on'] }, 'setUp: ["on"] given; possible: named values in braces'],
    [{ setUp: 'on' }, 'setUp: "on" given; possible: named values in braces'],
    [{ lidStock: true }, 'lidStock: true given; possible: a length'],
    [{ seed: Number.NaN }, 'seed: null given; possible: a number'],
    [{ stackMoisture: '9' }, 'stackMoisture: "9" given; possible: a number as the meter reads it'],
    [{ margin: 20 }, 'margin: 20 given; possible: a number from 0 to 1'],
  ])('%j is refused by its own name', (wrong, message) => {
    expect(() => checkParameters({ ...parameters, ...wrong }, expected as object)).toThrow(message);
  });

  it.each(Object.keys(parameters))('null and nothing for %s are refused', (name) => {
    for (const [nothing, said] of [
      [null, 'null given'],
      [undefined, 'nothing given'],
    ])
      expect(() => checkParameters({ ...parameters, [name]: nothing }, expected)).toThrow(
        `${name}: ${said}; possible:`,
      );
  });
});
