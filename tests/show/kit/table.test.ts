import { describe, expect, it } from 'vitest';
import { table } from '../../../kernel-helpers/src/show/kit/table.js';
import { elementsOf } from '../read-html.js';

const cells = (text: string, tag: string) => elementsOf(text, tag).map((cell) => cell.textContent);

describe('a table', () => {
  const { mime, text } = table({
    columns: ['Part', { head: 'Length', unit: 'in' }, { head: 'Cost', decimals: 2 }],
    rows: [
      ['side', 12.5, 3],
      ['lid & tongue', 10.34375, 12.345],
      ['bottom', null, 0],
    ],
    caption: 'Finished sizes',
  });

  it('puts the unit in the head, once', () => {
    expect(mime).toBe('text/html');
    expect(cells(text, 'th')).toEqual(['Part', 'Length, in', 'Cost']);
    expect(cells(text, 'caption')).toEqual(['Finished sizes']);
  });

  it('gives the numbers of a column the same decimal places and sets them right', () => {
    expect(cells(text, 'td')).toEqual([
      'side',
      '12.50000',
      '3.00',
      'lid & tongue',
      '10.34375',
      '12.35',
      'bottom',
      '',
      '0.00',
    ]);
    const aligned = elementsOf(text, 'td').map((cell) => cell.getAttribute('style')?.replace('text-align: ', ''));
    expect(aligned.slice(0, 3)).toEqual(['left', 'right', 'right']);
  });

  it('keeps a figure with its fraction and its unit when the line breaks', () => {
    const { text } = table({ columns: ['a'], rows: [['9 1/2 in (241.3 mm)'], ['3 of 4 inches']], caption: 'c' });
    for (const cell of ['9\u00a01/2\u00a0in (241.3\u00a0mm)', '3 of 4 inches']) expect(text).toContain(`>${cell}<`);
  });

  it('has no head over a column without a name: an empty one would be read out', () => {
    const { text } = table({ columns: ['', 'Price'], rows: [['as asked', 640]], caption: 'Two prices' });
    expect(elementsOf(text, 'thead th').map(({ textContent }) => textContent)).toEqual(['Price']);
    expect(elementsOf(text, 'thead td')).toHaveLength(1);
  });

  it('has no row of heads when all heads are empty', () => {
    const { text } = table({ columns: ['', ''], rows: [['Piece', 'Tea chest']], caption: 'On one card' });
    expect(elementsOf(text, 'thead')).toHaveLength(0);
  });

  it('names the row that is too short, and a number that is none', () => {
    expect(() => table({ columns: ['a', 'b'], rows: [[1, 2], [3]], caption: 'Sizes' })).toThrow(
      'rows: row 2 of "Sizes" has 1 cells; 2 are possible',
    );
    expect(() => table({ columns: ['a'], rows: [[Number.NaN]], caption: 'Sizes' })).toThrow(
      'rows: a in "Sizes" is NaN; a finite number is possible',
    );
  });
});
