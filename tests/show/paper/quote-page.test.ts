import { describe, expect, it } from 'vitest';
import { estimateCost } from '../../../kernel-helpers/src/money/cost.js';
import { estimateHours } from '../../../kernel-helpers/src/money/hours.js';
import { formatMoney, money, unitsOf } from '../../../kernel-helpers/src/money/money.js';
import { countWork } from '../../../kernel-helpers/src/money/operations.js';
import { quote } from '../../../kernel-helpers/src/money/quote.js';
import { readBrief } from '../../../kernel-helpers/src/piece/brief.js';
import { signed } from '../../../kernel-helpers/src/record/papers.js';
import { type ClientQuote, quotePage } from '../../../kernel-helpers/src/show/paper/quote-page.js';
import { box, dovetails } from '../../money/a-box.js';
import { dangerous, elementsOf, readHtml } from '../read-html.js';

const brief = readBrief({
  client: 'R. Example',
  piece: 'Tea chest',
  promised: '2027-02-12',
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
  joint: 'through dovetail',
  personal: 'the word TEA, cut into the lid',
  home: 'chicago-ohare',
  units: 'both',
});
const hours = estimateHours({ counts: countWork({ piece: box, joint: dovetails, boards: 2, letters: 3, coats: 3 }) });
const spending = {
  currency: 'USD',
  boards: [{ mark: 'A', thickness: 1, width: 7, length: 83, price: 14.37 }],
  otherMaterials: [{ what: 'Finish', price: 6.83 }],
  outsideWork: [{ what: 'Knob, turned', price: 18.49 }],
  packing: 8.27,
  hours: hours.mean,
  hourlyRate: 38.61,
  overheadPerYear: 14437,
  billableHoursPerYear: 1187,
  contingency: 0.053,
};
const cost = estimateCost(spending);
const offer = quote({
  cost: cost.total,
  margin: 0.217,
  deposit: 0.4,
  date: '2026-12-01',
  validDays: 30,
  tax: { name: 'Sales tax', rate: 0.0825, how: 'on top' },
});
const content: ClientQuote = {
  maker: ['The maker', 'Workshop Lane 1'],
  date: '2026-12-01',
  brief,
  piece: box,
  finish: 'shellac, 2 coats',
  moves: 0.0625,
  included: ['packing'],
  quote: offer,
  ready: '2027-02-12',
  others: [{ name: 'In cherry', price: money(871, 'USD') }],
};
const page = quotePage(content);
const text = readHtml(page).querySelectorAll('body');
const words = [...text]
  .map((body) => body.textContent)
  .join(' ')
  .replaceAll('\u00a0', ' ');

/** Every number in the file, however it is written: 1,002.00 as 1002. */
const numbersIn = (file: string) =>
  [...file.replace(/(?<=\d),(?=\d{3})/g, '').matchAll(/\d+(?:\.\d+)?/g)].map(([number]) => Number(number));

/** The look is the same for every quote, so no figure of this one is in it: see below. */
const style = /<style>.*?<\/style>/s;
const withoutStyle = (file: string) => file.replace(style, '');

describe("the client's quote", () => {
  it('says what, wood, joint, size, personalisation, price, tax, deposit, balance, day and validity', () => {
    for (const said of [
      'Tea chest',
      'R. Example',
      'Black walnut, solid',
      'through dovetail',
      '9 1/2 in',
      'the word TEA, cut into the lid',
      'shellac, 2 coats',
      formatMoney(offer.price),
      formatMoney(offer.tax.amount),
      'Sales tax, 8.25 %',
      formatMoney(offer.deposit),
      formatMoney(offer.balance),
      '12 February 2027',
      '31 December 2026',
      'In cherry',
      '$871.00',
      '1/16 in',
    ])
      expect(words).toContain(said);
  });

  it('holds no inside figure anywhere in the file', () => {
    const numbers = numbersIn(withoutStyle(page));
    const inside = [
      ...cost.lines.flatMap(({ amount }) => [unitsOf(amount), amount.minor]),
      unitsOf(cost.total),
      cost.total.minor,
      cost.overheadPerHour,
      spending.hourlyRate,
      spending.overheadPerYear,
      spending.billableHoursPerYear,
      spending.boards[0]?.price as number,
      unitsOf(offer.net) - unitsOf(cost.total),
      ...[hours.mean, hours.low, hours.high, hours.p50, hours.p80, hours.p95, hours.deviation],
      ...hours.byOperation
        .flatMap(({ mean, minutes }) => [mean, ...minutes])
        .filter((figure) => !Number.isInteger(figure)),
      ...[offer.margin, offer.markup, 0.217, spending.contingency].flatMap((share) => [share, 100 * share]),
    ];
    for (const figure of inside)
      for (const decimals of [0, 1, 2, 3]) {
        const written = Number(figure.toFixed(decimals));
        // Whole numbers under a hundred stand in sizes and days too: 8, 12.
        if (Number.isInteger(written) && written < 100) continue;
        expect(numbers, `${figure} as ${written}`).not.toContain(written);
      }
    expect(words).not.toMatch(/margin|markup|overhead|hour|contingency|labour|odds|cost/i);
  });

  it('gives the reference of its entry in the record', () => {
    const kept = signed(page, { seq: 9, hash: '3fa4c0d19b2e'.padEnd(64, '7') });
    expect(kept).toContain('Reference in our record: <span class="reference">9:3fa4c0d19b2e</span>');
  });

  it('has the same look whatever is in it', () => {
    const other = quotePage({
      ...content,
      finish: 'oil',
      quote: quote({ cost: money(100, 'EUR'), margin: 0.1, deposit: 0.3, date: '2027-01-01', validDays: 9 }),
    });
    expect(other.match(style)?.[0]).toBe(page.match(style)?.[0]);
    expect(page.match(style)?.[0]).toContain('@page');
  });

  it('finds a figure that does not belong there: the search works', () => {
    expect(numbersIn(quotePage({ ...content, included: [formatMoney(cost.total)] }))).toContain(unitsOf(cost.total));
  });

  it('leaves tax, other ways and the lid out where there is nothing to say', () => {
    const plain = quotePage({
      ...content,
      quote: quote({ cost: cost.total, margin: 0.2, deposit: 0.5, date: '2026-12-01', validDays: 30 }),
      others: [],
      included: [],
      moves: undefined,
    });
    expect(plain).not.toMatch(/tax/i);
    expect(plain).not.toContain('could also be made');
    expect(plain).not.toContain('Included');
    expect(plain).not.toContain('by about');
  });

  it('keeps whatever a client or a maker is called as plain text, and loads nothing', () => {
    const hostile = '</title><img src=x onerror=alert(1)><script>alert(1)</script>';
    const taken = quotePage({
      ...content,
      maker: [hostile],
      finish: hostile,
      included: [hostile],
      brief: { ...brief, client: hostile, piece: hostile, personal: hostile },
      others: [{ name: hostile, price: money(1, 'USD') }],
    });
    expect(elementsOf(taken, 'script, img')).toEqual([]);
    expect(dangerous(taken).filter((found) => found !== '<style>')).toEqual([]);
    expect(elementsOf(taken, 'body')[0]?.textContent).toContain(hostile);
  });

  it('writes the money of other countries', () => {
    const euros = quotePage({
      ...content,
      quote: quote({ cost: money(500, 'EUR'), margin: 0.2, deposit: 0.5, date: '2026-12-01', validDays: 30 }),
    });
    expect(euros).toContain('€625.00');
    const yen = quotePage({
      ...content,
      quote: quote({ cost: money(80_000, 'JPY'), margin: 0.2, deposit: 0.5, date: '2026-12-01', validDays: 30 }),
    });
    expect(yen).toContain('¥100,000');
  });
});
