import { describe, expect, it } from 'vitest';
import { parameterLines } from '../../../kernel-helpers/src/show/page/parameter-lines.js';

describe('a cell of parameters', () => {
  it('reads as names, values and notes', () => {
    const source = [
      'const parameters = {',
      "  insideLength: '9 1/2 in',      // inside, front to back",
      '  coats: 3,',
      '  // a line of its own is no parameter',
      '',
      "  personal: 'TEA, 1/2 // deep: {cut}', // how it is made personal",
      '  "ring angle": 20, // degrees',
      '};',
    ].join('\n');
    expect(parameterLines(source)).toEqual([
      { name: 'insideLength', value: '9 1/2 in', note: 'inside, front to back' },
      { name: 'coats', value: '3', note: '' },
      { name: 'personal', value: 'TEA, 1/2 // deep: {cut}', note: 'how it is made personal' },
      { name: 'ring angle', value: '20', note: 'degrees' },
    ]);
  });

  it('shows a list as one line an entry, as one would write it on paper', () => {
    const source = [
      'const parameters = {',
      '  boards: [ // measured at the yard',
      "    { mark: 'A', width: '7 3/4 in', price: 14.5 },",
      "    { mark: 'B', width: '6 1/4 in', price: 14.5 },",
      '  ],',
      '};',
    ].join('\n');
    expect(parameterLines(source)).toEqual([
      {
        name: 'boards',
        value: 'mark A, width 7 3/4 in, price 14.5\nmark B, width 6 1/4 in, price 14.5',
        note: 'measured at the yard',
      },
    ]);
  });

  it.each([
    ['two on a line', 'const p = {\n  a: 1, b: 2,\n};'],
    ['code before', "import x from 'x';\nconst p = {\n  a: 1,\n};"],
    ['code after', 'const p = {\n  a: 1,\n};\nf(p);'],
    ['a bracket left open', 'const p = {\n  a: [1,\n};'],
    ['a spread', 'const p = {\n  ...rest,\n};'],
    ['nothing', ''],
  ])('written otherwise (%s) is left to be shown as code', (_, source) => {
    expect(parameterLines(source)).toBeUndefined();
  });
});
