import { inspect } from 'node:util';
import { describe, expect, it } from 'vitest';
import { placeText, written } from '../../kernel-helpers/src/measure/refused/refused.js';
import { refusal, ShopError, within } from '../../kernel-helpers/src/measure/shop-error.js';

const possible = 'possible: 1/4 in to 1 1/2 in';
const inSheet = (path: PropertyKey[], given: unknown, parameters: object) =>
  refusal({ path, given, possible }).inSheet(parameters);

describe('an error of ours', () => {
  it('is printed as its one line', () => {
    expect(inspect(new ShopError('kerf: 0 given; possible: more'))).toBe('kerf: 0 given; possible: more');
  });

  it('says a place as one says it, and a value as it was typed', () => {
    expect(placeText(['boards', 2, 'length'])).toBe('boards no. 3, length');
    expect(written('5 lb')).toBe('"5 lb" given');
    expect(written(undefined)).toBe('nothing given');
    expect(written('x'.repeat(500)).length).toBeLessThan(200);
  });

  it('is named from the whole when a part was read', () => {
    const read = () =>
      within(['boards', 2], () => {
        throw refusal({ path: ['length'], given: '5 lb', possible });
      });
    expect(read).toThrow(`boards no. 3, length: "5 lb" given; ${possible}`);
  });

  it('knows what it refuses when it was written as a line', () => {
    expect(new ShopError('tails: 9 given; possible: 1 to 6').refused).toEqual({
      path: ['tails'],
      given: 9,
      possible: 'possible: 1 to 6',
    });
    expect(new ShopError('there is no folder').refused).toBeUndefined();
  });
});

describe('in a sheet, what is refused has the name that stands there', () => {
  it.each([
    ['the same name', ['kerf'], '58 in', { kerf: '58 in', endTrim: '58 in' }, 'kerf: "58 in" given'],
    ['another name', ['kind'], 'nob', { handle: 'nob', coats: 2 }, 'handle: "nob" given'],
    [
      'a name that another has too',
      ['bitDiameter'],
      '9 in',
      { bitDiameter: '1/2 in', coreBoxDiameter: '9 in' },
      'coreBoxDiameter: "9 in"',
    ],
    [
      'a group of another name',
      ['allowances', 'panelWidth'],
      '9 in',
      { panels: { panelWidth: '9 in' } },
      'panels, panelWidth: "9 in"',
    ],
    ['a list', [2, 'length'], '5 lb', { boards: [{}, {}, { length: '5 lb' }] }, 'boards no. 3, length: "5 lb"'],
    ['no name at all', [], 0, { planSeconds: 0, kerf: '1/8 in' }, 'planSeconds: 0 given'],
    [
      'a value that several hold',
      ['length'],
      '9 ft',
      { endTrim: '9 ft', lengthAllowance: '9 ft' },
      'lengthAllowance: "9 ft"',
    ],
    [
      'a value that several hold, none likelier',
      ['ends'],
      '9 ft',
      { kerf: '9 ft', trim: '9 ft' },
      'kerf or trim: "9 ft"',
    ],
    ['a value that is not typed here', ['fromMoisture'], 80, { kerf: '1/8 in' }, 'from moisture: 80 given'],
    ['nothing', ['kerf'], undefined, { kerf: undefined }, 'kerf: nothing given'],
  ])('%s', (_, path, given, parameters, message) => {
    expect(inSheet(path, given, parameters)).toBe(
      message.includes('given') ? `${message}; ${possible}` : `${message} given; ${possible}`,
    );
  });

  it('also where the line shows the value in the units of the shop', () => {
    expect(
      new ShopError('bitDiameter: 3 in given; possible: less').inSheet({ coreBoxDiameter: '3', bitDiameter: '1/2' }),
    ).toBe('coreBoxDiameter: 3 in given; possible: less');
  });

  it('and a line that refuses no value stays as it is', () => {
    expect(new ShopError('the record is damaged').inSheet({ kerf: 1 })).toBe('the record is damaged');
  });
});
