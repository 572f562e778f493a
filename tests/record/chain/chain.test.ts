import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readChain } from '../../../kernel-helpers/src/record/chain/chain.js';
import type { EntryContent } from '../../../kernel-helpers/src/record/chain/entry.js';
import { sha256 } from '../../../kernel-helpers/src/record/chain/sha256.js';
import { content, must, recordBytes } from '../setting.js';

const anyContent: fc.Arbitrary<EntryContent> = fc
  .record({
    who: fc.string({ unit: 'grapheme' }),
    what: fc.constantFrom('brief', 'sizing', 'lid'),
    inputs: fc.jsonValue(),
    results: fc.jsonValue(),
    seed: fc.option(fc.nat(), { nil: undefined }),
  })
  .map(content);
const anyRecord = fc.array(anyContent, { minLength: 1, maxLength: 5 });

/** A record's lines, each with its newline. */
function linesOf(bytes: Buffer): Buffer[] {
  const ends = [...bytes].flatMap((byte, i) => (byte === 0x0a ? [i + 1] : []));
  return ends.map((end, i) => bytes.subarray(ends[i - 1] ?? 0, end));
}

describe('a record as it was written', () => {
  it('gives back every decision, each line holding the hash of the one before', () => {
    fc.assert(
      fc.property(anyRecord, (contents) => {
        const bytes = recordBytes(contents);
        const { entries, faults, head, incomplete } = readChain(bytes);
        expect(faults).toEqual([]);
        expect(incomplete).toBeUndefined();
        const prevs = linesOf(bytes).map((line) => sha256(line.subarray(0, -1)));
        entries.forEach((entry, i) => {
          expect(entry).toEqual({
            ...JSON.parse(JSON.stringify(contents[i])),
            seq: i + 1,
            prev: prevs[i - 1] ?? '0'.repeat(64),
            hash: prevs[i],
          });
        });
        expect(entries).toHaveLength(contents.length);
        expect(head).toEqual({ seq: contents.length, hash: prevs.at(-1) });
      }),
    );
  });

  it('reads as empty when nothing was decided', () => {
    expect(readChain(new Uint8Array())).toEqual({ entries: [], faults: [], unterminated: false });
  });

  it('cannot be changed by whoever reads it', () => {
    const { entries } = readChain(recordBytes([content({ results: { parts: [{ length: 12 }] } })]));
    const { parts } = must(entries[0]).results as { parts: object[] };
    expect(() => parts.push({ length: 13 })).toThrow(TypeError);
    expect(() => Object.assign(must(parts[0]), { length: 13 })).toThrow(TypeError);
  });
});

describe('a record that someone changed', () => {
  it('names the line in which any one byte is another, the last line too', () => {
    fc.assert(
      fc.property(anyRecord, fc.nat(), fc.integer({ min: 1, max: 255 }), (contents, place, change) => {
        const bytes = recordBytes(contents);
        const at = place % bytes.length;
        const line = linesOf(bytes.subarray(0, at)).length + 1;
        bytes.writeUInt8(bytes.readUInt8(at) ^ change, at);
        const { faults, incomplete, entries } = readChain(bytes);
        // Without its newline the last line is no longer finished: it is named as such.
        if (at === bytes.length - 1) {
          expect(incomplete).toBeDefined();
          expect(entries).toHaveLength(contents.length - 1);
        } else {
          expect(faults[0]).toMatchObject({ line, problem: expect.stringContaining(`line ${line} `) });
        }
      }),
      { numRuns: 500 },
    );
  });

  it('names the line in which a byte was put in or taken out', () => {
    fc.assert(
      fc.property(anyRecord, fc.nat(), fc.option(fc.integer({ min: 0, max: 255 })), (contents, place, put) => {
        const bytes = recordBytes(contents);
        const at = place % (bytes.length - 1);
        // A newline put behind a line leaves that line whole: the empty one after it is the stranger.
        const behind = put === 0x0a && bytes[at] === 0x0a ? 1 : 0;
        const line = linesOf(bytes.subarray(0, at)).length + 1 + behind;
        const rest = bytes.subarray(put === null ? at + 1 : at);
        const changed = Buffer.concat([bytes.subarray(0, at), Buffer.from(put === null ? [] : [put]), rest]);
        expect(readChain(changed).faults[0]).toMatchObject({ line });
      }),
      { numRuns: 500 },
    );
  });

  it('names the place where a line was removed', () => {
    fc.assert(
      fc.property(fc.array(anyContent, { minLength: 2, maxLength: 6 }), fc.nat(), (contents, pick) => {
        const lines = linesOf(recordBytes(contents));
        const gone = pick % (lines.length - 1);
        const { faults } = readChain(Buffer.concat(lines.filter((_, i) => i !== gone)));
        expect(faults).toHaveLength(1);
        expect(faults[0]?.problem).toContain(
          `line ${gone + 1} holds entry ${gone + 2} where entry ${gone + 1} belongs`,
        );
      }),
    );
  });

  it('notices two lines that changed places', () => {
    fc.assert(
      fc.property(fc.array(anyContent, { minLength: 2, maxLength: 6 }), fc.nat(), fc.nat(), (contents, a, b) => {
        const lines = linesOf(recordBytes(contents));
        const first = Math.min(a % lines.length, b % lines.length);
        const second = Math.max(a % lines.length, b % lines.length);
        fc.pre(first !== second);
        const swapped = lines.map((line, i) => must(i === first ? lines[second] : i === second ? lines[first] : line));
        expect(readChain(Buffer.concat(swapped)).faults[0]).toMatchObject({ line: first + 1 });
      }),
    );
  });

  it('notices a line that was replaced by another one with a good seal', () => {
    const [kept, replaced] = [content({ inputs: 1 }), content({ inputs: 2 })];
    const later = must(linesOf(recordBytes([kept, content({ inputs: 3 })]))[1]);
    const forged = Buffer.concat([recordBytes([replaced]), later]);
    expect(readChain(forged).faults[0]?.problem).toContain('line 2 does not follow from line 1');
  });

  it('names each of two damaged lines once, and says what to do', () => {
    const lines = linesOf(recordBytes([1, 2, 3, 4].map((inputs) => content({ inputs }))));
    for (const i of [0, 2]) lines[i] = Buffer.from(must(lines[i]).toString().replace('maker', 'other'));
    const { faults, entries } = readChain(Buffer.concat(lines));
    expect(faults.map((fault) => fault.line)).toEqual([1, 3]);
    expect(faults[0]?.remedy).toContain('Put back a copy');
    expect(entries.map((entry) => entry.seq)).toEqual([2, 4]);
  });
});

describe('a record whose last write was cut short', () => {
  it('holds every whole line, and the rest counts as never written', () => {
    fc.assert(
      fc.property(anyRecord, fc.nat(), (contents, place) => {
        const bytes = recordBytes(contents);
        const cut = bytes.subarray(0, place % bytes.length);
        const whole = linesOf(cut);
        const rest = cut.length - Buffer.concat(whole).length;
        const { entries, faults, incomplete, unterminated } = readChain(cut);
        expect(faults).toEqual([]);
        // Only a line that lacks nothing but its newline is there whole.
        expect(entries).toHaveLength(whole.length + (unterminated ? 1 : 0));
        expect(incomplete?.length ?? 0).toBe(unterminated ? 0 : rest);
        if (unterminated) expect(bytes[cut.length]).toBe(0x0a);
      }),
      { numRuns: 300 },
    );
  });

  it('holds a last line that lacks nothing but its newline', () => {
    const { entries, incomplete } = readChain(recordBytes([content(), content({ seed: 1 })]).subarray(0, -1));
    expect(entries.map((entry) => entry.seq)).toEqual([1, 2]);
    expect(incomplete).toBeUndefined();
  });

  it('cannot be told from a shorter record when whole lines are gone: only a head kept elsewhere shows that', () => {
    const contents = [1, 2, 3].map((inputs) => content({ inputs }));
    const shorter = Buffer.concat(linesOf(recordBytes(contents)).slice(0, 2));
    expect(readChain(shorter).faults).toEqual([]);
    expect(readChain(shorter).head).not.toEqual(readChain(recordBytes(contents)).head);
  });
});
