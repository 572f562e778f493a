import { expect, it } from 'vitest';
import { longDay } from '../../../kernel-helpers/src/show/kit/day-text.js';
import { laterStartTable, stepTable } from '../../../kernel-helpers/src/show/tables/day-tables.js';
import { boxDays } from '../a-schedule.js';
import { elementsOf, tableRows } from '../read-html.js';

const made = boxDays('2027-03-12');
const captionOf = (starts: Parameters<typeof laterStartTable>[0]) =>
  elementsOf(laterStartTable(starts).text, 'caption')[0]?.textContent ?? '';

it('every step has a row; what has to wait says until when and for what', () => {
  const rows = tableRows(stepTable(made.steps));
  expect(rows).toHaveLength(made.steps.length);
  const waiting = made.steps.flatMap(({ wait }, i) => (wait ? [rows[i]?.[5]] : []));
  expect(waiting.length).toBeGreaterThan(0);
  for (const text of waiting) expect(text).toMatch(/^until \w{3} \d+ \w{3,4}: [a-z]/);
});

it('names the last day to begin, or that it is past', () => {
  expect(captionOf([made])).toContain(longDay(made.latestStart ?? ''));
  const { latestStart: _, ...late } = made;
  expect(captionOf([late])).toMatch(/: past$/);
});

it('says that no day is certain, however early it is begun', () => {
  const early = boxDays('2027-11-12');
  expect(early.odds).toBe(1);
  expect(tableRows(laterStartTable([early])).map((row) => row[3])).toEqual(['over 99']);
});
