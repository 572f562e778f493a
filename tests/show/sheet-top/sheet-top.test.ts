import { expect, test, vi } from 'vitest';
import type { SheetNews } from '../../../kernel-helpers/src/record/sheet-news.js';
import { place } from '../../../kernel-helpers/src/show/kit/display.js';
import { safeHtml } from '../../../kernel-helpers/src/show/page/safe-html.js';
import { sheetTop } from '../../../kernel-helpers/src/show/sheet-top/sheet-top.js';
import { elementsOf } from '../read-html.js';

const lid: SheetNews = {
  ...{ what: 'lid', sentence: 'plane to 6.640 in', outcome: 'recorded', moved: [], further: [] },
  entry: { seq: 11, at: '2026-12-01T10:00:00Z' },
};
const textsOf = (html: string, selector: string) => elementsOf(html, selector).map(({ textContent }) => textContent);

test('one sentence, in bold, and where it stands in the record', () => {
  const { text } = sheetTop({ news: [lid] });
  expect(textsOf(text, 'p')).toEqual(['Plane to 6.640 in. Decided, entry 11.']);
  expect(textsOf(text, 'strong')).toEqual(['Plane to 6.640 in.']);
  expect(textsOf(text, 'table')).toEqual([]);
  const same = sheetTop({ news: [{ ...lid, outcome: 'same' }] }).text;
  expect(textsOf(same, 'p')).toEqual(['Plane to 6.640 in. As decided on 2026-12-01, entry 11.']);
  const practice = sheetTop({ news: [{ ...lid, outcome: 'practice', entry: undefined }] }).text;
  expect(textsOf(practice, 'p')).toEqual(['Plane to 6.640 in. Practice: nothing is kept.']);
});

test('what moved, before and now, here and further on', () => {
  const { text } = sheetTop({
    news: [
      {
        ...lid,
        before: { at: '2026-11-25T10:00:00Z', draft: false },
        moved: [{ name: 'Lid planed to', before: '6.657 in', now: '6.640 in' }],
        further: [
          { what: 'stock', sentence: '3 boards, $75.04', notRunSince: true, moved: [] },
          {
            ...{ what: 'quote', sentence: '$952.00', notRunSince: false },
            moved: [{ name: 'Price', before: '$952.00', now: '$977.00' }],
          },
        ],
      },
    ],
  });
  expect(textsOf(text, 'thead th')).toEqual(['What moved', 'As decided on 2026-11-25', 'Now']);
  expect(textsOf(text, 'tbody tr')).toEqual([
    'Lid planed to6.657 in6.640 in',
    'Stock3 boards, $75.04not run since',
    'Quote: Price$952.00$977.00',
  ]);
});

test('a draft says that it is one, and what it is compared with', () => {
  const moved = [{ name: 'Lid planed to', before: '6.657 in', now: '6.640 in' }];
  const draft: SheetNews = { ...lid, outcome: 'draft', entry: undefined, moved };
  const { text } = sheetTop({ news: [{ ...draft, before: { at: '2026-12-01T10:00:00Z', draft: true } }] });
  expect(textsOf(text, 'p')).toEqual(['Plane to 6.640 in. A draft: not decided.']);
  expect(textsOf(text, 'thead th')).toEqual(['What moved', 'The draft before', 'Now']);
});

test('a decision that was refused comes before all else', () => {
  const { text } = sheetTop({ news: [lid], refused: 'lid is not recorded: it binds.' });
  expect(textsOf(text, 'p')[0]).toBe('■ Lid is not recorded: it binds.');
});

test('before anything is decided it says so', () => {
  expect(textsOf(sheetTop({ news: [] }).text, 'p')).toEqual(['Nothing is decided in this run yet.']);
});

test('nothing that was typed acts as a part of the page, and the page leaves it as it is', () => {
  const { text } = sheetTop({ news: [{ ...lid, sentence: '<img src=x onerror=alert(1)>' }] });
  expect(textsOf(text, 'img')).toEqual([]);
  const plain = sheetTop({ news: [{ ...lid, moved: [{ name: 'Lid', before: '6 in', now: '5 in' }] }] }).text;
  expect(safeHtml(plain).replace(/\s/g, '')).toBe(plain.replace(/\s/g, ''));
});

test('a place is shown where it is first filled, and written over after that', () => {
  const shown: string[] = [];
  const newDisplay = vi.fn(() => ({ raw: (_: string, text: string) => shown.push(text) }));
  vi.stubGlobal('__tslab__', { require: () => ({ newDisplay }) });
  const fill = place();
  fill({ mime: 'text/html', text: 'first' });
  fill({ mime: 'text/html', text: 'then' });
  expect(newDisplay).toHaveBeenCalledTimes(1);
  expect(shown.map((text) => text.replace(/<[^>]+>/g, ''))).toEqual(['first', 'then']);
});

test('outside the kernel a place does nothing', () => {
  expect(() => place()({ mime: 'text/html', text: 'nowhere' })).not.toThrow();
});
