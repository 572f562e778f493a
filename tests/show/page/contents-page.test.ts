import { expect, test } from 'vitest';
import type { CommissionCard } from '../../../kernel-helpers/src/shop/commission-card.js';
import { commissionPage } from '../../../kernel-helpers/src/show/page/commission-page.js';
import { contentsPage } from '../../../kernel-helpers/src/show/page/contents-page.js';
import { bareShelf, type Shelf } from '../../../kernel-helpers/src/show/page/shelf.js';
import { elementsOf } from '../read-html.js';

const card = (over: Partial<CommissionCard>): CommissionCard => ({
  ...{
    name: '2026-03-12-tea-chest',
    date: '2026-03-12',
    first: 'a',
    head: { seq: 9, hash: 'abcdef0123456789' },
    lids: [],
    watches: [],
    behind: [],
  },
  ...over,
});
const learning = [{ title: '01 Reading a tape', question: 'What does the tape say?', opens: '01-reading-a-tape' }];
const book = { commissions: [card({})], problems: [], empty: [] };

test('every commission stands there, newest first, with where its record ends', () => {
  const newer = card({ name: '2026-05-01-box', date: '2026-05-01', piece: 'Letter box', answer: 'declined' });
  const html = contentsPage({ ...book, commissions: [card({ piece: 'Tea chest' }), newer] }, new Map(), []);
  const rows = elementsOf(html, 'tbody tr').map(({ textContent }) => textContent);
  expect(rows).toHaveLength(2);
  expect(rows[0]).toContain('Letter box');
  expect(rows[0]).toContain('declined');
  expect(rows[1]).toContain('9:abcdef012345');
});

test('how far it is, when it is promised, its price and what is to be watched stand in its row', () => {
  const open = card({
    ...{ piece: 'Tea chest', promised: '2027-02-12', answer: 'accepted' as const, behind: ['stock', 'quote'] },
    quoted: { date: '2026-12-01', price: { minor: 97700, currency: 'USD' }, hours: 12.6 },
    watches: ['lid: gap in winter', 'days: in time'],
  });
  const shelves = new Map([[open.name, { ...bareShelf, drafts: ['sizing'] }]]);
  const html = contentsPage({ ...book, commissions: [open] }, shelves, []);
  const heads = elementsOf(html, 'thead th').map(({ textContent }) => textContent);
  const cells = elementsOf(html, 'tbody td').map(({ textContent }) => textContent);
  const under = (head: string) => cells[heads.indexOf(head)];
  expect(under('State')).toBe('accepted; behind: stock, quote; draft of sizing');
  expect(under('Promised')).toBe('2027-02-12');
  expect(under('Price')).toBe('$977.00');
  expect(under('To watch')).toBe('lid: gap in winter; days: in time');
});

const shelf: Shelf = {
  page: true,
  sheets: ['04-lid-through-the-year'],
  papers: ['joint.dxf', 'quote.html'],
  drafts: [],
};

test('a commission with a page is linked to it, to its sheets on it, and to its papers; one without is not', () => {
  const links = (shelves: [string, Shelf][]) =>
    elementsOf(contentsPage(book, new Map(shelves), []), 'main a').map((a) => [a.textContent, a.getAttribute('href')]);
  expect(links([['2026-03-12-tea-chest', shelf]])).toEqual([
    ['2026-03-12-tea-chest', '2026-03-12-tea-chest/index.html'],
    ['04 lid through the year', '2026-03-12-tea-chest/index.html#sheet-04-lid-through-the-year'],
    ['joint (dxf)', '2026-03-12-tea-chest/joint.dxf'],
    ['quote', '2026-03-12-tea-chest/quote.html'],
  ]);
  expect(links([['2026-03-12-tea-chest', { ...shelf, page: false }]])).toHaveLength(2);
  expect(links([])).toEqual([]);
});

test('a sheet on the page is where its link leads', () => {
  const notebook = { cells: [{ cell_type: 'markdown', source: '# The lid' }] };
  const record = { entries: [], problems: [] };
  const page = commissionPage({ title: 'Tea chest', sheets: [{ name: '04-lid-through-the-year', notebook }], record });
  expect(elementsOf(page, '#sheet-04-lid-through-the-year')).toHaveLength(1);
});

test('a commission of which nothing is decided is named with its drafts, and leads to its page', () => {
  const shelves = new Map([['2026-05-01-box', { ...shelf, drafts: ['brief', 'sizing'] }]]);
  const html = contentsPage({ ...book, empty: ['2026-05-01-box'] }, shelves, []);
  const [item] = elementsOf(html, 'main ul.small li');
  expect(item?.textContent).toBe('2026-05-01-box: draft of brief, sizing');
  expect([...(item?.querySelectorAll('a') ?? [])].map((a) => a.getAttribute('href'))).toEqual([
    '2026-05-01-box/index.html',
  ]);
});

test('every sheet to learn from is named with what it asks, and what opens it', () => {
  const items = elementsOf(contentsPage(book, new Map(), learning), 'main li').map(({ textContent }) => textContent);
  expect(items).toEqual(['01 Reading a tape: What does the tape say? npm run lab -- 01-reading-a-tape']);
});

test('what people typed is text: it cannot run, load or lead anywhere', () => {
  const hostile = '"><script>alert(1)</script><img src=x onerror=alert(1)>';
  const html = contentsPage(
    {
      commissions: [card({ name: hostile, piece: hostile, client: hostile })],
      problems: [{ name: hostile, problem: hostile }],
      empty: [hostile],
    },
    new Map([[hostile, { page: true, sheets: [hostile], papers: [hostile], drafts: [hostile] }]]),
    [{ title: hostile, question: hostile, opens: hostile }],
  );
  expect(elementsOf(html, 'script, img')).toEqual([]);
  expect(html).toContain("default-src 'none'");
});

test('what is not counted is named at the head', () => {
  const html = contentsPage({ ...book, problems: [{ name: 'x', problem: 'its record is damaged' }] }, new Map(), []);
  expect(elementsOf(html, '.problems li').map(({ textContent }) => textContent)).toEqual(['x: its record is damaged']);
});
