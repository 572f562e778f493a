import { expect, it } from 'vitest';
import { progressTable } from '../../../kernel-helpers/src/show/tables/progress-table.js';

const tried = {
  at: '2026-03-12T19:30:00-05:00',
  who: '<b>apprentice</b>',
  lesson: '01-reading-a-tape',
  what: 'the sum',
  yours: 4.5,
  computed: 4.625,
  unit: 'in',
  hit: false,
  note: 'the sum: you say 4 1/2 in.',
};

it('what was tried is shown with its day and how it came out, as plain text', () => {
  const { text } = progressTable([tried, { ...tried, hit: true, note: 'A hit.' }]);
  expect(text).toContain('What you tried: 1 of 2 a hit');
  expect(text).toContain('2026-03-12');
  expect(text).toContain('A hit.');
  expect(text).toContain('&lt;b&gt;apprentice');
});

it('says so when nothing was tried', () => {
  expect(progressTable([]).text).toContain('Nothing tried yet');
});
