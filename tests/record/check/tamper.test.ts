import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EntryContent, Head } from '../../../kernel-helpers/src/record/chain/entry.js';
import { checkCommission } from '../../../kernel-helpers/src/record/check/check.js';
import { knownHead, knownHeadsName, noteHead } from '../../../kernel-helpers/src/record/known-heads.js';
import { commissionFolder, content, must, open, recordBytes, sizing } from '../setting.js';

const decisions: EntryContent[] = [
  content({ what: 'brief', results: { inside: 9.5, wood: 'walnut-black' } }),
  content({ what: 'sizing', results: { width: 11.25, parts: [{ name: 'lid', length: 12 }] } }),
  content({ what: 'lid', results: { fittedWidth: 6.656, months: [0.125, 0.061, 0.018] }, seed: 7 }),
  content({ what: 'quote', results: { price: { minor: 104_700, currency: 'USD' } } }),
  content({ what: 'actuals', results: { actual: 15.25 } }),
];
const whole = recordBytes(decisions);
const text = whole.toString('utf8');
const lines = text.trimEnd().split('\n');

/** One way of changing a record: gives its new bytes. */
type Edit = (a: number, b: number, value: number) => Buffer;

const splice = (from: number, to: number, put: Uint8Array) =>
  Buffer.concat([whole.subarray(0, from), put, whole.subarray(to)]);
const joined = (kept: readonly string[]) => Buffer.from(kept.length > 0 ? `${kept.join('\n')}\n` : '');
const put = <T>(list: readonly T[], at: number, each: T) => [...list.slice(0, at), each, ...list.slice(at)];

const edits: Record<string, Edit> = {
  'another byte': (a, _, value) => {
    const at = a % whole.length;
    return splice(at, at + 1, Buffer.from([value]));
  },
  'bytes put in': (a, b, value) => splice(a % whole.length, a % whole.length, Buffer.alloc(1 + (b % 40), value)),
  'bytes taken out': (a, b) => splice(a % whole.length, (a % whole.length) + 1 + (b % 200), Buffer.alloc(0)),
  'another digit': (a, _, value) => {
    const digits = [...text.matchAll(/\d/g)].map((match) => match.index);
    return splice(
      must(digits[a % digits.length]),
      must(digits[a % digits.length]) + 1,
      Buffer.from(String(value % 10)),
    );
  },
  'a line taken out': (a) => joined(lines.filter((_, i) => i !== a % lines.length)),
  'a line twice': (a, b) => joined(put(lines, b % (lines.length + 1), must(lines[a % lines.length]))),
  'two lines that changed places': (a, b) => {
    const swapped = [...lines];
    [swapped[a % lines.length], swapped[b % lines.length]] = [
      must(lines[b % lines.length]),
      must(lines[a % lines.length]),
    ];
    return joined(swapped);
  },
  'the end cut off': (a) => whole.subarray(0, a % whole.length),
  'whole lines cut off the end': (a) => joined(lines.slice(0, a % lines.length)),
  'all written anew, in good form': (a, _, value) =>
    recordBytes(decisions.map((each, i) => (i === a % decisions.length ? { ...each, results: { value } } : each))),
  'written anew from a line on, and longer': (a, b) =>
    recordBytes([
      ...decisions.slice(0, a % decisions.length),
      ...Array<EntryContent>(1 + (b % 8)).fill(content({ what: 'brief', results: { inside: b } })),
    ]),
};

/** A commission with that record, and a head known from elsewhere. */
function faultsOf(bytes: Uint8Array, folder: string, head: Head) {
  writeFileSync(join(folder, 'record.jsonl'), bytes);
  return checkCommission(folder, { head });
}

describe('a record that somebody changed', () => {
  it('is named as changed after each of 1,000 random edits, when the reference of its last entry is on the quote', () => {
    const folder = commissionFolder();
    const { head } = faultsOf(whole, folder, { seq: 1, hash: '0'.repeat(64) });
    const kinds = new Set<string>();
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(edits)), fc.nat(), fc.nat(), fc.nat(255), (kind, a, b, value) => {
        const edited = must(edits[kind])(a, b, value);
        // Nothing was changed; or only the last newline is gone, and every entry is there as it was.
        fc.pre(!edited.equals(whole) && !edited.equals(whole.subarray(0, -1)));
        kinds.add(kind);
        const { faults } = faultsOf(edited, folder, must(head));
        expect(faults.length, kind).toBeGreaterThan(0);
        for (const { problem, remedy } of faults) {
          expect(problem).toMatch(/^(line \d+ |entry 5)/);
          expect(remedy).toContain('Put back a copy');
        }
      }),
      { numRuns: 1000 },
    );
    expect([...kinds].sort()).toEqual(Object.keys(edits).sort());
  });

  it('is found from a shop book that still has its first name, which goes on under the new one', () => {
    const folder = commissionFolder();
    writeFileSync(join(folder, 'record.jsonl'), whole);
    noteHead(folder);
    renameSync(join(folder, '..', knownHeadsName), join(folder, '..', 'known-heads.json'));
    const known = knownHead(folder);
    expect(known?.seq).toBe(5);
    writeFileSync(join(folder, 'record.jsonl'), joined(lines.slice(0, 3)));
    expect(checkCommission(folder).faults[0]?.problem).toContain('the end of the record was cut off');
  });

  it('is found without anyone typing the reference, when the shop book has it', () => {
    const folder = commissionFolder();
    writeFileSync(join(folder, 'record.jsonl'), whole);
    expect(noteHead(folder)).toBe(true);
    expect(checkCommission(folder).faults).toEqual([]);
    writeFileSync(join(folder, 'record.jsonl'), joined(lines.slice(0, 3)));
    expect(checkCommission(folder).faults[0]?.problem).toBe(
      'entry 5, known from elsewhere, is missing: the end of the record was cut off',
    );
    writeFileSync(join(folder, 'record.jsonl'), must(edits['all written anew, in good form'])(1, 0, 3));
    expect(checkCommission(folder).faults[0]?.problem).toMatch(
      /^entry 5 is not the one .* the record was written anew$/,
    );
  });
});

describe("the shop's own book of where records end", () => {
  it('goes on with an honest record, and never from one that was cut or written anew', () => {
    const folder = commissionFolder();
    const job = open(folder);
    expect(noteHead(folder)).toBe(false);
    job.decide('brief', { inputs: {}, results: { inside: 10, wood: 'cherry-black' } });
    expect(noteHead(folder)).toBe(true);
    job.decide('sizing', sizing);
    expect(noteHead(folder)).toBe(true);
    expect(knownHead(folder)).toEqual(job.head());
    const record = join(folder, 'record.jsonl');
    writeFileSync(record, `${must(readFileSync(record, 'utf8').split('\n')[0])}\n`);
    expect(noteHead(folder)).toBe(false);
    expect(knownHead(folder)?.seq).toBe(2);
  });

  it('keeps every commission apart', () => {
    const first = commissionFolder();
    const second = commissionFolder(join(first, '..', '..', '..'), '2026-04-01-tea-chest');
    for (const [folder, inside] of [
      [first, 10],
      [second, 11],
    ] as const) {
      open(folder).decide('brief', { inputs: {}, results: { inside, wood: 'cherry-black' } });
      noteHead(folder);
    }
    expect(knownHead(first)).toEqual(open(first).head());
    expect(knownHead(second)).toEqual(open(second).head());
  });

  it('is refused when somebody spoilt it', () => {
    const folder = commissionFolder();
    writeFileSync(join(folder, '..', knownHeadsName), '{"2026-03-12-blanket-box": {"seq": 1}}');
    expect(() => knownHead(folder)).toThrow(/last-entries\.json: it is not as the daybook wrote it\. Put back a copy/);
  });
});
