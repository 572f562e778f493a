import { describe, expect, it } from 'vitest';
import { compareRecords, origins } from '../../../kernel-helpers/src/record/check/compare.js';
import { content, entriesOf, must, versions } from '../setting.js';

const sizing = content({ what: 'sizing', inputs: { inside: 10 }, results: { width: 11.25, lid: { gap: 0.03 } } });
const recorded = entriesOf([content({ what: 'brief' }), sizing]);

function rerun(over: Partial<typeof sizing>) {
  return compareRecords(recorded, entriesOf([content({ what: 'brief' }), { ...sizing, ...over }]))[1];
}

describe('running a commission again', () => {
  it('says same for every decision that came out the same, whatever the versions', () => {
    expect(rerun({ results: { width: 11.25 * (1 + 1e-12), lid: { gap: 0.03 } } })?.outcome).toBe('same');
    expect(rerun({ versions: { ...versions, node: '24.1.0', build: 'def' } })).toEqual({
      ...{ what: 'sizing', outcome: 'same', moved: [], why: [] },
    });
  });

  it('compares the latest form of each decision', () => {
    const revised = entriesOf([sizing, { ...sizing, results: { width: 12 } }]);
    expect(compareRecords(revised, entriesOf([{ ...sizing, results: { width: 12 } }]))[0]?.outcome).toBe('same');
  });

  it('names exactly the values that moved, and the inputs that moved them', () => {
    expect(rerun({ inputs: { inside: 10.5 }, results: { width: 11.75, lid: { gap: 0.03 } } })).toEqual({
      what: 'sizing',
      outcome: 'moved',
      moved: [
        { path: 'inputs.inside', recorded: 10, now: 10.5 },
        { path: 'results.width', recorded: 11.25, now: 11.75 },
      ],
      why: ['inside as typed changed'],
    });
  });

  it.each([
    [{ helpers: '0.2.0' }, 'kernel-helpers was 0.1.0, now 0.2.0'],
    [{ build: 'def' }, 'build of kernel-helpers was abc, now def'],
    [{ data: { species: '12' } }, 'data file species was 11, now 12'],
    [{ data: {} }, 'data file species was 11, now not used'],
    [{ tslab: '1.0.22' }, 'tslab was not used, now 1.0.22'],
  ])('says which version moved a value: %o', (change, why) => {
    const results = { width: 11.25, lid: { gap: 0.04 } };
    expect(rerun({ results, versions: { ...versions, ...change } })).toMatchObject({
      outcome: 'moved',
      moved: [{ path: 'results.lid.gap' }],
      why: [why],
    });
  });

  it('says when an earlier decision moved first, and admits when nothing tells the cause', () => {
    const moved = content({ what: 'brief', results: { inside: 11 } });
    const needs = { brief: { seq: 1, hash: must(entriesOf([moved])[0]).hash } };
    const after = entriesOf([moved, { ...sizing, needs, results: { width: 12.25 } }]);
    const compared = compareRecords(recorded, after);
    expect(compared.map(({ why }) => why)).toEqual([
      ['cause unknown: inputs, versions and data are as recorded'],
      ['brief moved'],
    ]);
    expect(origins(compared).map(({ what }) => what)).toEqual(['brief']);
  });

  it('lists what was recorded and not decided again, and the other way round', () => {
    const after = entriesOf([content({ what: 'brief' }), content({ what: 'quote' })]);
    expect(compareRecords(recorded, after).map(({ what, outcome }) => [what, outcome])).toEqual([
      ['brief', 'same'],
      ['sizing', 'missing'],
      ['quote', 'new'],
    ]);
  });
});
