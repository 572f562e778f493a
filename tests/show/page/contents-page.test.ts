import { expect, test } from 'vitest';
import type { CommissionCard } from '../../../kernel-helpers/src/shop/commission-card.js';
import { contentsPage } from '../../../kernel-helpers/src/show/page/contents-page.js';
import { elementsOf } from '../read-html.js';

const card = (over: Partial<CommissionCard>): CommissionCard => ({
  ...{
    name: '2026-03-12-tea-chest',
    date: '2026-03-12',
    first: 'a',
    head: { seq: 9, hash: 'abcdef0123456789' },
    lids: [],
  },
  ...over,
});
const learning = [
  { title: '01 Reading a tape', question: 'What does the tape say?', path: '../../worksheets/lessons/01-a b.ipynb' },
];
const book = { commissions: [card({})], problems: [], empty: [] };

test('every commission stands there, newest first, with where its record ends', () => {
  const newer = card({ name: '2026-05-01-box', date: '2026-05-01', piece: 'Letter box', answer: 'declined' });
  const html = contentsPage({ ...book, commissions: [card({ piece: 'Tea chest' }), newer] }, new Set(), []);
  const rows = elementsOf(html, 'tbody tr').map(({ textContent }) => textContent);
  expect(rows).toHaveLength(2);
  expect(rows[0]).toContain('Letter box');
  expect(rows[0]).toContain('declined');
  expect(rows[1]).toContain('9, abcdef012345');
});

test('a commission with a page is linked to it, and one without is not', () => {
  const links = (pages: string[]) =>
    elementsOf(contentsPage(book, new Set(pages), []), 'a').map((a) => a.getAttribute('href'));
  expect(links(['2026-03-12-tea-chest'])).toEqual(['2026-03-12-tea-chest/index.html']);
  expect(links([])).toEqual([]);
});

test('every sheet to learn from is named with what it asks, and linked', () => {
  const [item] = elementsOf(contentsPage(book, new Set(), learning), 'main li');
  expect(item?.textContent).toBe('01 Reading a tape: What does the tape say?');
  const links = elementsOf(contentsPage(book, new Set(), learning), 'main li a');
  expect(links.map((a) => a.getAttribute('href'))).toEqual(['../../worksheets/lessons/01-a%20b.ipynb']);
});

test('what people typed is text: it cannot run, load or lead anywhere', () => {
  const hostile = '"><script>alert(1)</script><img src=x onerror=alert(1)>';
  const html = contentsPage(
    {
      commissions: [card({ name: hostile, piece: hostile, client: hostile })],
      problems: [{ name: hostile, problem: hostile }],
      empty: [hostile],
    },
    new Set([hostile]),
    [{ title: hostile, question: hostile, path: hostile }],
  );
  expect(elementsOf(html, 'script, img')).toEqual([]);
  expect(html).toContain("default-src 'none'");
});

test('what is not counted is named at the head', () => {
  const html = contentsPage({ ...book, problems: [{ name: 'x', problem: 'its record is damaged' }] }, new Set(), []);
  expect(elementsOf(html, '.problems li').map(({ textContent }) => textContent)).toEqual(['x: its record is damaged']);
});
