import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cautions, cautionTable } from '../../../kernel-helpers/src/show/tables/cautions.js';
import { elementsOf } from '../read-html.js';

const file = join(import.meta.dirname, '..', '..', '..', 'data', 'cautions.json');
const data = JSON.parse(readFileSync(file, 'utf8')) as { cautions: Record<string, unknown>[] };

describe('cautions', () => {
  it('stand for every operation that a sheet sends someone to', () => {
    expect([...cautionTable(data).byId().keys()]).toEqual([
      'table-saw',
      'jointer',
      'planer',
      'router-table',
      'dovetail-saw-and-chisel',
      'hand-plane',
      'sanding',
      'glue',
      'oil-finish',
      'dust',
      'band-saw',
      'mitre-saw',
      'drill-press',
      'hand-router',
      'carving-machine',
      'carving-tools',
      'clamps',
      'film-finish',
      'hinges-and-screws',
      'moving-boards',
    ]);
  });

  it('each ends by giving way to the manual or the directions, local codes and a qualified person, and names its source', () => {
    for (const { comesFirst, source } of cautionTable(data).all()) {
      expect(comesFirst).toMatch(/(manual|directions).*(local codes|local fire code).*qualified person come first\.$/);
      expect(source).toBe('common practice, no source');
    }
  });

  it('show the operations asked for, in that order, each with its last word', () => {
    const { text } = cautions('oil-finish', 'table-saw');
    expect(elementsOf(text, 'p:first-child strong').map((heading) => heading.textContent)).toEqual([
      '▲ Caution: Oil finish and its rags',
      '▲ Caution: Table saw',
    ]);
    expect(text).toContain('catch fire hours later');
    expect(text.match(/come first\./g)).toHaveLength(2);
  });

  it('name the nearest when there is no such operation', () => {
    expect(() => cautions('table-sow')).toThrow('cautions: "table-sow" is not in the list; nearest: table-saw');
  });

  it('name the entry and the field that is at fault in the data', () => {
    const broken = structuredClone(data);
    (broken.cautions[1] as { points: unknown[] }).points = [];
    expect(() => cautionTable(broken).all()).toThrow(
      'data/cautions.json, entry jointer, field points: at least one caution is needed',
    );
  });
});
