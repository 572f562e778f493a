import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dollarSign, markdown, nonBreaking } from '../../../kernel-helpers/src/show/kit/escape.js';
import { figure } from '../../../kernel-helpers/src/show/kit/figure.js';
import { svgPicture } from '../../../kernel-helpers/src/show/kit/svg.js';
import { table } from '../../../kernel-helpers/src/show/kit/table.js';
import { proseHtml } from '../../../kernel-helpers/src/show/page/prose.js';
import { findingList } from '../../../kernel-helpers/src/show/tables/finding-list.js';
import { readHtml } from '../read-html.js';

const textOf = (html: string) => readHtml(html).textContent.trim();

describe('amounts in dollars in the words of a sheet', () => {
  const amounts = fc.array(fc.integer({ min: 0, max: 1e6 }), { minLength: 2, maxLength: 5 });

  it('never put two dollar signs into one run of text, which a notebook would read as mathematics', () => {
    fc.assert(
      fc.property(amounts, (list) => {
        const text = list.map((amount) => `$${amount}`).join(' and ');
        const shown = markdown`You ask ${text}; ${text} is left.`;
        // Each stands in an element of its own: what lies between is not one text.
        expect(shown.split(dollarSign)).toHaveLength(2 * list.length + 1);
        expect(shown.replaceAll(dollarSign, '')).not.toMatch(/\$|&#36;|&dollar;/);
      }),
    );
  });

  it('are dollars on the page too, with nothing around them', () => {
    fc.assert(
      fc.property(amounts, (list) => {
        const text = list.map((amount) => `$${amount}`).join(' and ');
        const html = proseHtml(markdown`You ask **${text}** for it.`);
        expect(textOf(html)).toBe(`You ask ${text} for it.`);
        expect(html).not.toContain('<math');
      }),
    );
  });

  it('leave a formula in the prose of a sheet a formula', () => {
    expect(proseHtml(`Of ${dollarSign}9 the part $x^2$.`)).toContain('<math');
  });
});

describe('a figure stays with its fraction and its unit', () => {
  const sizes = fc
    .tuple(fc.integer({ min: 1, max: 40 }), fc.constantFrom('1/2', '3/4', '61/64'), fc.constantFrom('in', 'mm', 'ft'))
    .map(([whole, part, unit]) => `${whole} ${part} ${unit}`);

  it.each<[string, (text: string) => string]>([
    ['in the words of a sheet', (text) => proseHtml(markdown`Cut it ${text} long.`)],
    ['in prose', (text) => proseHtml(`Cut it **${text}** long, or ${text}.`)],
    [
      'in a finding',
      (text) => findingList([{ rule: 'r', verdict: 'stop', figures: text, reason: text, change: text }]).text,
    ],
    ['in a table', (text) => table({ columns: [text, 'b'], rows: [[text, 1]], caption: text }).text],
    ['under a picture', (text) => figure({ svg: svgPicture(9, 9, []), alt: 'a', caption: text }).text],
  ])('%s', (_, shown) => {
    fc.assert(
      fc.property(sizes, (size) => {
        const text = shown(size);
        expect(text).toContain(size.replaceAll(' ', '\u00a0'));
        expect(text).not.toContain(size);
      }),
      { numRuns: 40 },
    );
  });

  it('which leaves all other spaces where a line may break', () => {
    expect(nonBreaking('2 boards 1 1/2 in thick, 3 in all')).toBe('2 boards 1\u00a01/2\u00a0in thick, 3\u00a0in all');
  });
});
