import { ShopError } from '../../measure/shop-error.js';
import { type Entry, type EntryContent, type Head, lineSchema } from './entry.js';
import { deepFreeze } from './json-value.js';
import { sha256 } from './sha256.js';

/** Something wrong with one line of a record. */
export interface Fault {
  /** The line's number in record.jsonl, from 1. */
  line: number;
  /** What is wrong, in one sentence that names the line. */
  problem: string;
  /** What to do about it. */
  remedy: string;
}

/** A record's bytes, read and verified. @internal */
export interface Chain {
  /** The entries that can be read and were not changed, in the order of their lines. */
  entries: Entry[];
  /** The last entry's number and hash; undefined for an empty record or one whose last line is damaged. */
  head?: Head;
  faults: Fault[];
  /** Bytes after the last whole line: a write that the power cut short. They count as never written. */
  incomplete?: Uint8Array;
  /** The last line is whole but its newline is missing. */
  unterminated: boolean;
}

const firstPrev = '0'.repeat(64);
const newline = 0x0a;
const sealPattern = /,"seal":"([0-9a-f]{64})"\}$/;
const sealLength = ',"seal":""}'.length + 64;

/**
 * The next line of a record as bytes, without its newline.
 *
 * Besides `prev`, which fixes the line before, each line ends in a `seal`: the SHA-256 of its own bytes up to there.
 * It names an edited line exactly and covers the last one, which no later `prev` holds yet. Neither can tell a record
 * that was cut short after a whole line, or written anew from the start, from an honest one: for that, keep the head
 * somewhere else, such as on the quote.
 *
 * @internal
 */
export function nextLine(head: Head | undefined, content: EntryContent): Uint8Array {
  const { at, who, what, needs, inputs, results, findings, overrides, seed, papers, withdraws, versions } = content;
  const seq = (head?.seq ?? 0) + 1;
  const prev = head?.hash ?? firstPrev;
  const whole = JSON.stringify({
    seq,
    at,
    who,
    what,
    needs,
    inputs,
    results,
    findings,
    overrides,
    seed,
    papers,
    withdraws,
    versions,
    prev,
  });
  const body = whole.slice(0, -1);
  return new TextEncoder().encode(`${body},"seal":"${sha256(body)}"}`);
}

/** Reads a record and verifies every line of it. Never throws: what is wrong is in `faults`. @internal */
export function readChain(bytes: Uint8Array): Chain {
  const { lines, rest } = splitLines(bytes);
  const unterminated = rest.length > 0 && readLine(rest) !== undefined;
  if (unterminated) lines.push(rest);
  const entries: Entry[] = [];
  const faults: Fault[] = [];
  // Unknown after a damaged line, so that one change is named once and not again by every line after it.
  let before: Head | undefined | 'unknown';
  lines.forEach((bytes, index) => {
    const line = index + 1;
    const entry = readLine(bytes);
    if (!entry) {
      faults.push(fault(line, `line ${line} was changed after it was written, or is not an entry`));
      before = 'unknown';
      return;
    }
    const problem = before === 'unknown' ? undefined : linkProblem(entry, line, before);
    if (problem) faults.push(fault(line, problem));
    entries.push(entry);
    before = { seq: entry.seq, hash: entry.hash };
  });
  return {
    entries: deepFreeze(entries),
    head: before === 'unknown' ? undefined : before,
    faults,
    incomplete: rest.length > 0 && !unterminated ? rest : undefined,
    unterminated,
  };
}

/**
 * Nothing is read from a damaged record or added to it.
 *
 * @param name  the commission's
 * @throws ShopError  names the first fault and its remedy
 * @internal
 */
export function refuseDamaged(name: string, faults: Fault[]): void {
  const first = faults[0];
  if (!first) return;
  const more = faults.length > 1 ? ` (and ${faults.length - 1} more)` : '';
  throw new ShopError(
    `The record of ${name} is damaged: ${first.problem}${more}. ${first.remedy} Until then nothing is read from it or added to it.`,
  );
}

/** @internal */
export function fault(line: number, problem: string): Fault {
  return {
    line,
    problem,
    remedy:
      'Put back a copy of record.jsonl from before the change (from a backup). Without a copy, give the damaged file another name, keep it, and run the sheets again: they begin a new record.',
  };
}

function linkProblem(entry: Entry, line: number, before: Head | undefined): string | undefined {
  const due = (before?.seq ?? 0) + 1;
  if (entry.seq !== due) {
    return `line ${line} holds entry ${entry.seq} where entry ${due} belongs: lines were removed, added or have changed places`;
  }
  if (entry.prev === (before?.hash ?? firstPrev)) return undefined;
  return line === 1
    ? 'line 1 says that another line came before it: the beginning was replaced'
    : `line ${line} does not follow from line ${line - 1}: one of the two was replaced`;
}

function readLine(bytes: Uint8Array): Entry | undefined {
  const seal = sealPattern.exec(text(bytes.subarray(-sealLength)))?.[1];
  if (seal === undefined || seal !== sha256(bytes.subarray(0, -sealLength))) return undefined;
  try {
    const { seal: _, ...fields } = JSON.parse(text(bytes));
    return lineSchema.safeParse(fields).success ? { ...fields, hash: sha256(bytes) } : undefined;
  } catch {
    return undefined;
  }
}

function text(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
}

function splitLines(bytes: Uint8Array): { lines: Uint8Array[]; rest: Uint8Array } {
  const lines: Uint8Array[] = [];
  let start = 0;
  for (let end = bytes.indexOf(newline); end >= 0; end = bytes.indexOf(newline, start)) {
    lines.push(bytes.subarray(start, end));
    start = end + 1;
  }
  return { lines, rest: bytes.subarray(start) };
}
