import { expect, it } from 'vitest';
import { glueTable, sandingTable } from '../../../kernel-helpers/src/show/tables/surface-tables.js';
import { allGlues } from '../../../kernel-helpers/src/surface/finish/glues.js';
import { planGluing } from '../../../kernel-helpers/src/surface/finish/gluing.js';
import { planSanding } from '../../../kernel-helpers/src/surface/finish/sanding.js';
import { box } from '../../money/a-box.js';
import { tableRows } from '../read-html.js';

it('says of each grade whether the inside gets it too', () => {
  const sanding = planSanding({ box, kept: ['P120', 'P150', 'P180', 'P220'], from: 'P120', to: 'P220' });
  const where = new Map(tableRows(sandingTable(sanding)).map((row) => [row[0], row[3]]));
  expect([...where.keys()]).toEqual(sanding.outside.map(({ id }) => id));
  for (const { id } of sanding.outside)
    expect(where.get(id)).toBe(sanding.inside.some((grade) => grade.id === id) ? 'outside and inside' : 'outside');
  expect(new Set(where.values()).size).toBe(2);
});

it('says of every glue whether this assembly leaves time for it', () => {
  const slow = planGluing({ glue: 'hide-liquid', joints: 4, minutesPerJoint: 100, temperatureC: 20, area: 10 });
  const rows = tableRows(glueTable(slow));
  expect(rows).toHaveLength(allGlues().length);
  const openFor = ([, open]: string[]) => Number(open?.split(' to ').at(-1));
  for (const row of rows) expect(row[3]).toBe(openFor(row) >= slow.assemblyMinutes ? 'yes' : 'no');
});
