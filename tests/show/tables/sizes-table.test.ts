import { expect, it } from 'vitest';
import { sizesTable } from '../../../kernel-helpers/src/show/tables/sizes-table.js';
import { box } from '../../money/a-box.js';
import { elementsOf, tableRows } from '../read-html.js';

it('every part has its three sizes in the units of the brief', () => {
  const shown = sizesTable(box.parts, { lengths: 'mm', caption: 'as planed today' });
  expect(elementsOf(shown.text, 'caption')[0]?.textContent).toBe('as planed today');
  const rows = tableRows(shown);
  expect(rows.map(([name]) => name)).toEqual(box.parts.map(({ name }) => name));
  // Inside 9 1/2 in long, boards 5/8 in, the joint flush: 10 3/4 in.
  expect(rows.find(([name]) => name === 'side')?.slice(1, 3)).toEqual(['2', '273.1 mm']);
});
