import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { entryOf, readEntries } from '../../kernel-helpers/src/measure/data-file.js';
import { species } from '../../kernel-helpers/src/wood/species.js';

const entry = z.object({ id: z.string(), hours: z.number() });

describe('a data file', () => {
  it('names the entry and the field at fault', () => {
    const data = { glues: [{ id: 'hide', hours: 'two' }] };
    expect(() => readEntries('glues.json', data, 'glues', entry)).toThrow('data/glues.json, entry hide, field hours:');
  });

  it('names an entry that stands twice', () => {
    const data = {
      glues: [
        { id: 'hide', hours: 2 },
        { id: 'hide', hours: 3 },
      ],
    };
    expect(() => readEntries('glues.json', data, 'glues', entry)).toThrow('entry hide: it stands there twice');
  });

  it('offers near ids for one that it lacks', () => {
    const read = readEntries(
      'glues.json',
      {
        glues: [
          { id: 'hide-hot', hours: 2 },
          { id: 'epoxy', hours: 9 },
        ],
      },
      'glues',
      entry,
    );
    expect(() => entryOf(read, 'hide', 'glue')).toThrow('glue: "hide" is not in the list; nearest: hide-hot');
    expect(() => entryOf(read, 'epoxi', 'glue')).toThrow('nearest: epoxy');
    expect(() => entryOf(read, 'plumtree', 'glue')).toThrow(/none is near it; possible: .*epoxy/);
  });

  it('offers the one that was misspelt before those that share a word', () => {
    expect(() => species('wallnut-black')).toThrow('nearest: walnut-black');
    expect(() => species('chery')).toThrow(/nearest: cherry-black/);
    expect(() => species('qqqqqq')).toThrow(/none is near it; possible: .* and \d+ more$/);
  });
});
