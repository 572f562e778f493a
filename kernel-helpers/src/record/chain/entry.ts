import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';

/** Where a record stands: the number of its last entry and the SHA-256 of that entry's line. */
export interface Head {
  seq: number;
  hash: string;
}

/** What an entry was worked out with. */
export interface Versions {
  node: string;
  /** The kernel and its TypeScript; absent when the decision was not made in the kernel. */
  tslab?: string;
  typescript?: string;
  /** kernel-helpers: its version, and a digest of its built code (`source` when run unbuilt). */
  helpers: string;
  build: string;
  /** Digest of each data file, by name. */
  data: Record<string, string>;
}

/** One decision as the record keeps it. Entries are appended, never rewritten: a changed mind is a later entry. */
export interface Entry {
  /** 1 for the first entry, then counting up without a gap. */
  seq: number;
  /** Local date and time with its offset, `2026-03-12T19:30:00-05:00`. */
  at: string;
  who: string;
  /** What was decided: `brief`, `sizing`, `lid`. */
  what: string;
  /** The earlier entries it rests on, by what they decided. */
  needs: Record<string, Head>;
  inputs: unknown;
  results: unknown;
  findings: Finding[];
  /** Reasons for going on in spite of a `stop`, by rule. */
  overrides: Record<string, string>;
  seed?: number;
  /** Papers that were kept with it, by file name. */
  papers?: string[];
  /** The entry that this one withdraws: it decides nothing itself, and what stood before the withdrawn one stands again. */
  withdraws?: Head;
  versions: Versions;
  /** SHA-256 of the line before, as stored and without its newline; 64 zeros for the first. */
  prev: string;
  /** SHA-256 of this entry's own line, as stored and without its newline. Worked out on reading, not stored. */
  hash: string;
}

/** What a decision brings to its entry; the chain adds the rest. @internal */
export type EntryContent = Omit<Entry, 'seq' | 'prev' | 'hash'>;

/** What appending did. @internal */
export interface Appended {
  /** The new entry, or undefined when there was none to append. */
  entry?: Entry;
  /** The file that an incomplete last line was moved to. */
  setAside?: string;
}

/** What is said of a last line that the power cut short. @param file where its bytes are kept @internal */
export function setAsideText(file: string): string {
  return `The last line of the record was never finished (the power failed, most likely), so it does not count. It is kept in ${file}.`;
}

const digest = z.string().regex(/^[0-9a-f]{64}$/);

/** @internal */
export const headSchema = z.object({ seq: z.int().positive(), hash: digest });

/** @internal */
export const findingSchema = z.object({
  rule: z.string().min(1),
  verdict: z.enum(['ok', 'watch', 'stop']),
  figures: z.string(),
  reason: z.string(),
  change: z.string().optional(),
  absolute: z.enum(['unsafe', 'impossible']).optional(),
});

/** What a stored line must hold, besides its seal. @internal */
export const lineSchema = z.object({
  seq: z.int().positive(),
  at: z.iso.datetime({ offset: true }),
  who: z.string(),
  what: z.string().min(1),
  needs: z.record(z.string(), headSchema),
  inputs: z.unknown(),
  results: z.unknown(),
  findings: z.array(findingSchema),
  overrides: z.record(z.string(), z.string()),
  seed: z.number().optional(),
  papers: z.array(z.string()).optional(),
  withdraws: headSchema.optional(),
  versions: z.object({
    node: z.string(),
    tslab: z.string().optional(),
    typescript: z.string().optional(),
    helpers: z.string(),
    build: z.string(),
    data: z.record(z.string(), z.string()),
  }),
  prev: digest,
});
