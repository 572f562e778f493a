import { expect, it } from 'vitest';
import { airTable } from '../../../kernel-helpers/src/show/tables/air-table.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { tableRows } from '../read-html.js';

it('sets the room beside the outdoor air of the same month', () => {
  const outdoors = yearOfAir({ place: 'chicago-ohare' });
  const room = yearOfAir({ place: 'chicago-ohare', heating: { heatTo: 20, coolTo: 25, humidifyTo: 0.3 } });
  const rows = tableRows(airTable({ place: 'Chicago', outdoors, room }));
  expect(rows).toHaveLength(12);
  const [january = []] = rows;
  expect(january[0]).toBe('January');
  expect(Number(january[1])).toBeLessThan(0);
  expect(january.slice(3)).toEqual(['20', '30', 'humidifier']);
});
