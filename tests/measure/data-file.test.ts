import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { dataTable } from '../../kernel-helpers/src/measure/data-file.js';
import { species } from '../../kernel-helpers/src/wood/species.js';

const entry = z.object({ id: z.string(), hours: z.number() });

const gluesOf = (data: object) => dataTable('glues.json', data, { list: 'glues', what: 'glue', entry });

describe('a data file', () => {
  it('names the entry and the field at fault', () => {
    const glues = gluesOf({ glues: [{ id: 'hide', hours: 'two' }] });
    expect(() => glues.all()).toThrow('data/glues.json, entry hide, field hours:');
  });

  it('names an entry that stands twice', () => {
    const hide = { id: 'hide', hours: 2 };
    expect(() => gluesOf({ glues: [hide, hide] }).all()).toThrow('entry hide: it stands there twice');
  });

  it('writes out the sources that the file names once, of an entry and of its figures', () => {
    const cited = z.object({
      id: z.string(),
      source: z.string(),
      open: z.object({ hours: z.number(), source: z.string() }),
    });
    const data = {
      sources: { maker: 'the maker, leaflet of 2024' },
      glues: [{ id: 'hide', source: 'own trials', open: { hours: 2, source: 'maker' } }],
    };
    const glues = dataTable('glues.json', data, { list: 'glues', what: 'glue', entry: cited });
    expect(glues.entry('hide').source).toBe('own trials');
    expect(glues.entry('hide').open.source).toBe('the maker, leaflet of 2024');
  });

  it('offers near ids for one that it lacks', () => {
    const glues = gluesOf({
      glues: [
        { id: 'hide-hot', hours: 2 },
        { id: 'epoxy', hours: 9 },
      ],
    });
    expect(() => glues.entry('hide')).toThrow('glue: "hide" is not in the list; nearest: hide-hot');
    expect(() => glues.entry('epoxi')).toThrow('nearest: epoxy');
    expect(() => glues.entry('plumtree')).toThrow(/none is near it; possible: .*epoxy/);
  });

  it('offers the one that was misspelt before those that share a word', () => {
    expect(() => species('wallnut-black')).toThrow('nearest: walnut-black');
    expect(() => species('chery')).toThrow(/nearest: cherry-black/);
    expect(() => species('qqqqqq')).toThrow(/none is near it; possible: .* and \d+ more$/);
  });
});
