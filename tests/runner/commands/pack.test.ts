import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import fc from 'fast-check';
import { strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { checkCommission } from '../../../kernel-helpers/src/record/check/check.js';
import { knownHead } from '../../../kernel-helpers/src/record/known-heads.js';
import { packCommission } from '../../../kernel-helpers/src/runner/commands/pack.js';
import { unpackCommission } from '../../../kernel-helpers/src/runner/commands/unpack.js';
import { brief, commissionFolder, open, testFolder } from '../../record/setting.js';
import { digests } from '../../sheets/setting.js';

const name = '2026-03-12-blanket-box';

/** A commission with a sheet, a page, a paper and a record. */
function worked(inside = 10): string {
  const folder = commissionFolder();
  open(folder).decide('brief', { ...brief, results: { ...brief.results, inside } });
  writeFileSync(join(folder, '01-brief.ipynb'), '{"cells": []}');
  writeFileSync(join(folder, 'index.html'), '<!doctype html>');
  writeFileSync(join(folder, 'Böden und Füße.csv'), 'a;b');
  return folder;
}
const elsewhere = () => join(testFolder(), 'data', 'commissions');

/** A packed commission whose zip was tampered with. */
function changedZip(change: (files: Record<string, Uint8Array>) => Zippable): string {
  const { file } = packCommission(worked(), testFolder());
  writeFileSync(file, zipSync(change(unzipSync(readFileSync(file)))));
  return file;
}
/** Unpacking fails with this message, and leaves nothing behind. */
function refused(file: string, message: RegExp, into = elsewhere()): void {
  const before = existsSync(into) ? readdirSync(into, { recursive: true }) : [];
  expect(() => unpackCommission(file, into)).toThrow(message);
  expect(existsSync(into) ? readdirSync(into, { recursive: true }) : []).toEqual(before);
}

describe('a packed commission', () => {
  it('comes out on another machine byte for byte, and its record can be checked there against where it ended', () => {
    const folder = worked();
    const { file, leftOut } = packCommission(folder, testFolder());
    expect(basename(file)).toBe(`${name}.zip`);
    expect(leftOut).toEqual([]);
    const into = elsewhere();
    const unpacked = unpackCommission(file, into);
    expect(unpacked).toEqual({ folder: join(into, name), outcome: 'unpacked' });
    expect(digests(unpacked.folder)).toEqual(digests(folder));
    expect(checkCommission(unpacked.folder).faults).toEqual([]);
    expect(knownHead(unpacked.folder)).toEqual(checkCommission(folder).head);
  });

  it('is the same file each time, and never takes the place of another', () => {
    const folder = worked();
    const into = testFolder();
    const { file } = packCommission(folder, into);
    const before = readFileSync(file);
    expect(readFileSync(packCommission(folder, into).file).equals(before)).toBe(true);
    writeFileSync(join(folder, 'index.html'), 'another page');
    expect(() => packCommission(folder, into)).toThrow(/is there already, holds something else, and stays as it is/);
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('says what it left out', () => {
    const folder = worked();
    for (const name of ['photos', 'drafts']) mkdirSync(join(folder, name));
    writeFileSync(join(folder, '.hidden'), '');
    expect(packCommission(folder, testFolder()).leftOut).toEqual(['drafts (not decided)', 'photos (not a file)']);
  });

  it('is not made of a damaged record', () => {
    const folder = worked();
    const record = join(folder, 'record.jsonl');
    writeFileSync(record, readFileSync(record, 'utf8').replace('walnut', 'cherry'));
    expect(() => packCommission(folder, testFolder())).toThrow(/is not packed: line 1 was changed/);
  });
});

describe('unpacking', () => {
  it('says when the commission is here already, and changes nothing', () => {
    const folder = worked();
    const { file } = packCommission(folder, testFolder());
    writeFileSync(join(folder, 'index.html'), 'my own notes');
    const before = digests(folder);
    expect(unpackCommission(file, dirname(folder))).toEqual({ folder, outcome: 'here' });
    expect(digests(folder)).toEqual(before);
  });

  it('keeps two commissions of one name apart', () => {
    const { file } = packCommission(worked(), testFolder());
    const other = worked(12);
    refused(file, /another commission named 2026-03-12-blanket-box is here already\. Rename/, dirname(other));
  });

  it('asks which goes on when one commission was worked on in two places', () => {
    const folder = worked();
    const { file } = packCommission(folder, testFolder());
    open(folder).decide('brief', { ...brief, results: { inside: 13, wood: 'walnut-black' } });
    refused(file, /is here already, and its record is not the same\. Which of the two goes on/, dirname(folder));
  });

  it('finds the same commission under another name', () => {
    const folder = worked();
    const { file } = packCommission(folder, testFolder());
    renameSync(folder, join(dirname(folder), '2026-03-12-copy-of-blanket-box'));
    refused(file, /the same commission is here already as 2026-03-12-copy-of-blanket-box/, dirname(folder));
  });

  it('refuses a zip file cut off anywhere', () => {
    const { file } = packCommission(worked(), testFolder());
    const bytes = readFileSync(file);
    const into = elsewhere();
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), (end) => {
        writeFileSync(file, bytes.subarray(0, end));
        expect(() => unpackCommission(file, into)).toThrow(/is not a whole zip file|is not unpacked/);
        expect(existsSync(into)).toBe(false);
      }),
      { numRuns: 150 },
    );
  });

  it('refuses, or unpacks to the same bytes, a zip file with any one byte changed', () => {
    const folder = worked();
    const { file } = packCommission(folder, testFolder());
    const bytes = readFileSync(file);
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), (at, change) => {
        const changed = Buffer.from(bytes);
        changed.writeUInt8(changed.readUInt8(at) ^ change, at);
        writeFileSync(file, changed);
        const into = elsewhere();
        try {
          const unpacked = unpackCommission(file, into);
          expect(digests(unpacked.folder)).toEqual(digests(folder));
        } catch (error) {
          expect((error as Error).message).toMatch(/is not a whole zip file|is not unpacked/);
          expect(existsSync(into)).toBe(false);
        }
      }),
      { numRuns: 150 },
    );
  });

  it.each([
    '../outside.txt',
    `${name}/../../outside.txt`,
    '/etc/outside.txt',
    'C:/outside.txt',
    'C:\\outside.txt',
    `${name}\\..\\outside.txt`,
    `${name}/..`,
    `${name}/sub/outside.txt`,
    `${name}/.hidden`,
    `${name}/nul`,
    `${name}/COM1.txt`,
    `${name}/file.`,
    `${name}/a:stream`,
    `${name}/line\nfeed`,
    `${name}/`,
    'other-folder/file.txt',
    `${name}/INDEX.HTML`,
  ])('refuses a zip file that holds %j', (path) => {
    refused(
      changedZip((files) => ({ ...files, [path]: strToU8('outside') })),
      /is not unpacked: it holds ".*"(, and only plain files| twice, or in two spellings)/,
    );
  });

  it('refuses what was changed, taken out or put in after packing', () => {
    const page = `${name}/index.html`;
    refused(
      changedZip((files) => ({ ...files, [page]: strToU8('x') })),
      /index\.html was changed after it was packed/,
    );
    refused(
      changedZip(({ [page]: _, ...files }) => files),
      /index\.html is missing/,
    );
    refused(
      changedZip((files) => ({ ...files, [`${name}/more.txt`]: strToU8('x') })),
      /more\.txt was put in/,
    );
    refused(
      changedZip(({ [`${name}/packing-list.json`]: _, ...files }) => files),
      /no packing-list\.json, so it is no packed commission/,
    );
  });

  it('refuses a zip file of something else, one that would fill the disk, and one that is not there', () => {
    const file = join(testFolder(), 'other.zip');
    writeFileSync(file, zipSync({ 'holiday.jpg': strToU8('x') }));
    refused(file, /it holds "holiday\.jpg", and only plain files/);
    const many = Array.from({ length: 2001 }, (_, i) => [`${name}/${i}.txt`, strToU8('x')]);
    writeFileSync(file, zipSync(Object.fromEntries(many)));
    refused(file, /more than 2000 files or 500 MB, which no commission has/);
    writeFileSync(file, 'not a zip file');
    refused(file, /is not a whole zip file/);
    refused(join(testFolder(), 'none.zip'), /^There is no file/);
  });

  it('does not let a folder copied by hand go unnoticed', () => {
    const folder = worked();
    const { file } = packCommission(folder, testFolder());
    cpSync(folder, join(dirname(folder), '2026-03-12-blanket-box-copy'), { recursive: true });
    expect(unpackCommission(file, dirname(folder)).outcome).toBe('here');
  });
});
