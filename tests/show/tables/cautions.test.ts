import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cautions } from '../../../kernel-helpers/src/show/tables/cautions.js';
import { cautionTable } from '../../../kernel-helpers/src/surface/cautions.js';
import { glue } from '../../../kernel-helpers/src/surface/finish/glues.js';
import { species } from '../../../kernel-helpers/src/wood/species.js';
import { elementsOf } from '../read-html.js';

const file = join(import.meta.dirname, '..', '..', '..', 'data', 'cautions.json');
const data = JSON.parse(readFileSync(file, 'utf8')) as { cautions: Record<string, unknown>[] };

describe('cautions', () => {
  it('stand for every operation that a sheet sends someone to', () => {
    expect([...cautionTable(data).byId().keys()]).toEqual([
      'table-saw',
      'saw-jig',
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
      'round-bit',
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

  it('follow the wood: walnut warns of walnut dust, a wood that is not listed does not', () => {
    const dust = (species?: string) => cautions(['dust'], { species }).text;
    expect(dust('walnut-black')).toMatch(/Walnut dust irritates.*Toxic woods, Table 2/);
    expect(dust('cedar-western-red')).toContain('asthma');
    for (const wood of ['cherry-black', 'maple-sugar', 'poplar of my own']) {
      expect(dust(wood)).not.toMatch(/walnut|cedar|tropical|sensitive/i);
      expect(dust(wood)).toContain('ask a doctor');
    }
    expect(dust(), 'no wood is chosen yet').toContain('walnut, cedars and many tropical woods');
  });

  it('follow the finish: shellac has no oily rags, tung oil no solvent, and only one of both kinds shows', () => {
    const of = (finish?: string) => cautions(['oil-finish', 'film-finish', 'sanding'], { finish }).text;
    expect(of('shellac')).toContain('Caution: Shellac');
    expect(of('shellac')).not.toMatch(/rags|Oil finish|oil on it/i);
    expect(of('urethane-varnish')).toMatch(/oil-borne varnish heat up/);
    expect(of('tung-oil')).toMatch(/Spread every rag/);
    expect(of('tung-oil')).not.toMatch(/Shellac|solvent|pilot light/);
    expect(of('oil-wax')).toMatch(/pilot light/);
    expect(of(), 'none is chosen yet').toMatch(/Spread every rag.*oil-borne varnish/s);
  });

  it('follow the glue', () => {
    const of = (glue?: string | (string | undefined)[]) => cautions(['glue'], { glue }).text;
    expect(of('hide-liquid')).not.toMatch(/epoxies|glue pot|urea/);
    expect(of('hide-hot')).toContain('glue pot');
    expect(of('epoxy')).toContain('epoxies');
    expect(of('urea-powder')).toContain('urea-formaldehyde');
    expect(of()).toMatch(/epoxies.*glue pot/s);
    expect(of(['hide-liquid', 'epoxy']), 'panels get another').toContain('epoxies');
    expect(of(['epoxy', undefined]), 'one is not chosen yet').toContain('glue pot');
  });

  it('name only woods and glues that there are', () => {
    for (const { when, points } of cautionTable(data).all())
      for (const asked of [when, ...points.map((point) => point.when)]) {
        for (const id of asked?.species ?? []) if (id !== 'any') expect(species(id).id).toBe(id);
        for (const id of asked?.glue ?? []) expect(glue(id).id).toBe(id);
      }
  });

  it('are possible: no riving knife at a cut that does not go through, and each router its own direction', () => {
    const points = (id: string) =>
      cautionTable(data)
        .entry(id)
        .points.map(({ say }) => say)
        .join(' ');
    expect(points('table-saw')).toMatch(/goes through.*riving knife.*stay on/);
    expect(points('saw-jig')).not.toMatch(/riving knife[^.]*stays? on/);
    expect(points('saw-jig')).toContain('no place for a riving knife');
    expect(points('router-table')).toMatch(/from right to left, on an outside edge and in a groove/);
    expect(points('hand-router')).toMatch(/from left to right along an edge that faces you/);
    expect(points('carving-machine')).not.toMatch(/right to left|left to right/);
    expect(points('round-bit')).toContain('half its diameter, and never over about 1/4 in');
  });

  it('show the operations asked for, in that order, each with its last word', () => {
    const { text } = cautions(['oil-finish', 'table-saw']);
    expect(elementsOf(text, 'p:first-child strong').map((heading) => heading.textContent)).toEqual([
      '▲ Caution: Oil finish and its rags',
      '▲ Caution: Table saw',
    ]);
    expect(text).toContain('catch fire hours later');
    expect(text.match(/come first\./g)).toHaveLength(2);
  });

  it('name the nearest when there is no such operation', () => {
    expect(() => cautions(['table-sow'])).toThrow('cautions: "table-sow" is not in the list; nearest: table-saw');
  });

  it('name the entry and the field that is at fault in the data', () => {
    const broken = structuredClone(data);
    (broken.cautions[2] as { points: unknown[] }).points = [];
    expect(() => cautionTable(broken).all()).toThrow(
      'data/cautions.json, entry jointer, field points: [] given; at least one caution is needed',
    );
  });
});
