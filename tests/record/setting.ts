import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import * as z from 'zod';
import { nextLine, readChain } from '../../kernel-helpers/src/record/chain/chain.js';
import type { Entry, EntryContent, Versions } from '../../kernel-helpers/src/record/chain/entry.js';
import { type Commission, commissionIn } from '../../kernel-helpers/src/record/commission.js';
import { commissionFolder as placeOf } from '../../kernel-helpers/src/record/commission-folder.js';
import { noticesTo } from '../../kernel-helpers/src/record/notices.js';

/** Two decisions of a made-up commission: the sizing rests on the brief. */
export interface TestDecisions {
  brief: { inside: number; wood: string };
  sizing: { width: number; parts: { name: string; length: number }[] };
}

export const schemas = {
  brief: z.object({ inside: z.number(), wood: z.string() }),
  sizing: z.object({ width: z.number(), parts: z.array(z.object({ name: z.string(), length: z.number() })) }),
};

export const versions: Versions = { node: '20.19.0', helpers: '0.1.0', build: 'abc', data: { species: '11' } };

/** A folder for one test, removed after it. */
export function testFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'record-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** An empty commission's folder, as `newCommission` would place it. */
export function commissionFolder(root = testFolder(), name = '2026-03-12-blanket-box'): string {
  const folder = join(root, 'data', 'commissions', name);
  mkdirSync(folder, { recursive: true });
  return folder;
}

export function open(folder: string, over: { versions?: Versions } = {}): Commission<TestDecisions> {
  return commissionIn<TestDecisions>({ ...placeOf(folder), schemas, versions, notices: noticesTo(() => {}), ...over });
}

export const brief = { inputs: { inside: '10 in' }, results: { inside: 10, wood: 'walnut-black' } };
export const sizing = { inputs: { stock: '5/8 in' }, results: { width: 11.25, parts: [{ name: 'lid', length: 12 }] } };
/** A brief that later sheets take other figures from. */
export const otherBrief = (inside: number) => ({ ...brief, results: { ...brief.results, inside } });

/** Entry content with the least that an entry needs. */
export function content(over: Partial<EntryContent> = {}): EntryContent {
  const least = { at: '2026-03-12T19:30:00-05:00', who: 'maker', what: 'brief', needs: {}, inputs: {}, results: {} };
  return { ...least, findings: [], overrides: {}, versions, ...over };
}

/** The bytes of a record that holds these decisions. */
export function recordBytes(contents: EntryContent[]): Buffer {
  let bytes: Buffer = Buffer.alloc(0);
  for (const each of contents) bytes = Buffer.concat([bytes, nextLine(readChain(bytes).head, each), Buffer.from('\n')]);
  return bytes;
}

/** Entries as a record gives them back. */
export function entriesOf(contents: EntryContent[]): Entry[] {
  return readChain(recordBytes(contents)).entries;
}

/** A notebook with these code cells. */
export function writeSheet(folder: string, name: string, ...code: string[]): void {
  const cells = code.map((source) => ({ cell_type: 'code', source: source.split(/(?<=\n)/) }));
  writeFileSync(join(folder, name), JSON.stringify({ cells, nbformat: 4, nbformat_minor: 5, metadata: {} }));
}

/** A value that the test knows to be there. */
export function must<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('a value that this test rests on is missing');
  return value;
}
