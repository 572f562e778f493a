import { ShopError } from '../../measure/shop-error.js';
import { mostParts } from '../cut-plan/cut-job.js';
import type { CutPart } from '../cut-plan/plan.js';
import type { RoughPart } from './rough-part.js';

/** A piece that is planed and ripped whole: one part, or several in a row that are cut apart afterwards. In. */
export interface Blank {
  /** The part's own name, or `blank 1`. */
  name: string;
  /** Names of its parts as they are in the plan, from the marked end. */
  parts: string[];
  length: number;
  width: number;
  /** What it is planed to. */
  thickness: number;
  /** `part`: a part by itself; `figure`: its figure runs on from part to part; `short`: its parts are too short to feed alone. */
  because: 'part' | 'figure' | 'short';
}

/** Parts as the cut plan takes them, and how they are planed. */
export interface PartsToCut {
  /** Each with a name of its own: two sides in a row are `side 1` and `side 2`. */
  parts: CutPart[];
  blanks: Blank[];
  /** Name of the finished part by the name it has in the plan. */
  partOf: Record<string, string>;
}

/** A blank by its name, with what is in it. @internal */
export const blankWords = ({ name, parts }: Pick<Blank, 'name' | 'parts'>): string =>
  parts.length > 1 ? `${name} (${parts.join(', ')})` : name;

/** Rough parts that are in a blank. @internal */
export function partsIn(
  blank: Pick<Blank, 'parts'>,
  cut: { rough: readonly RoughPart[]; toCut: Pick<PartsToCut, 'partOf'> },
): RoughPart[] {
  return cut.rough.filter(({ name }) => blank.parts.some((part) => cut.toCut.partOf[part] === name));
}

/** Width that a blank is ripped to, the widest of its parts; in. @internal */
export const rippedWidth = (parts: readonly RoughPart[]): number =>
  Math.max(0, ...parts.map(({ finished }) => finished.width));

/**
 * Rough parts as they are cut out of the boards, planed and ripped: parts whose figure runs on stay in a row, and parts shorter
 * than the machines allow stay together as one longer blank until then. One that has no companion, or a row that is too short, is
 * left long.
 *
 * @param cut.rough  see `roughParts`; in
 * @param cut.leastLength  shortest piece that every machine on its way allows, in
 * @param cut.kerf  of the saw that cuts a blank apart, in
 * @param cut.sequences  names of parts in the order in which the figure runs: `[['side', 'front', 'side', 'back']]`
 * @returns parts for the plan and blanks; in
 * @throws ShopError  more parts than one plan takes; a sequence that names a part that is not there, or parts of more than one
 *   thickness
 * @see common practice, no source
 */
export function blanksOf(cut: {
  rough: readonly RoughPart[];
  leastLength: number;
  kerf: number;
  sequences?: readonly (readonly string[])[];
}): PartsToCut {
  const { rough, leastLength, kerf, sequences = [] } = cut;
  const all = rough.reduce((sum, { count }) => sum + count, 0);
  if (all > mostParts)
    throw new ShopError(
      `parts: ${all.toLocaleString('en-US')} given; possible: at most ${mostParts} at a time (plan the pieces of one commission by themselves)`,
    );
  const left = new Map(rough.map((part) => [part.name, part.count]));
  const parts: CutPart[] = [];
  const blanks: Blank[] = [];
  const partOf: Record<string, string> = {};
  const named = (name: string, part: string) => {
    partOf[name] = part;
    return name;
  };
  const numbered = (part: string) =>
    named(`${part} ${Object.values(partOf).filter((other) => other === part).length + 1}`, part);
  const together = (members: readonly RoughPart[], because: Blank['because']) => {
    const name = `blank ${blanks.filter(({ because: why }) => why !== 'part').length + 1}`;
    const width = Math.max(...members.map((part) => part.width));
    const thickness = (members[0] as RoughPart).finished.thickness;
    const lengths = members.map((part) => part.length);
    const inAll = () => lengths.reduce((sum, each) => sum + each, kerf * (members.length - 1));
    // Too short even in a row: the last one is left long until it is planed and ripped.
    const missing = Math.max(0, leastLength - inAll());
    lengths.push((lengths.pop() as number) + missing);
    const names = members.map((part) => (part.count === 1 ? named(part.name, part.name) : numbered(part.name)));
    blanks.push({ name, parts: names, length: inAll(), width, thickness, because });
    for (const [index, each] of names.entries())
      parts.push({ name: each, count: 1, length: lengths[index] as number, width, thickness, sequence: name });
  };

  for (const sequence of sequences)
    together(
      sequence.map((name) => taken(name, sequence)),
      'figure',
    );
  const short: RoughPart[] = [];
  for (const part of rough) {
    const count = left.get(part.name) as number;
    if (part.length < leastLength) for (let i = 0; i < count; i++) short.push(part);
    else for (let i = 0; i < count; i++) alone(part, part.length);
  }
  for (const alike of inGroups(short)) {
    const rows = inRows(alike, leastLength, kerf);
    for (const row of rows) {
      if (row.length === 1) alone(row[0] as RoughPart, leastLength);
      else together(row, 'short');
    }
  }
  return { parts: merged(parts), blanks, partOf };

  function alone(part: RoughPart, length: number): void {
    const { name, width, finished } = part;
    const { thickness } = finished;
    named(name, name);
    blanks.push({ name, parts: [name], length, width, thickness, because: 'part' });
    parts.push({ name, count: 1, length, width, thickness });
  }

  function taken(name: string, sequence: readonly string[]): RoughPart {
    const part = rough.find((other) => other.name === name);
    const count = left.get(name) ?? 0;
    if (!part || count < 1)
      throw new ShopError(
        `sequences: "${name}" in ${sequence.join(', ')} given; possible: ${rough.map((r) => `${r.name} (${r.count})`).join(', ')}, each as often as there is one`,
      );
    const first = rough.find((other) => other.name === sequence[0]) as RoughPart;
    if (part.finished.thickness !== first.finished.thickness)
      throw new ShopError(
        `sequences: ${sequence.join(', ')} given; possible: parts of one thickness, which are planed as one`,
      );
    left.set(name, count - 1);
    return part;
  }
}

/** Parts that can share a strip: of one width and one thickness. */
function inGroups(parts: readonly RoughPart[]): RoughPart[][] {
  const groups = new Map<string, RoughPart[]>();
  for (const part of parts) {
    const key = `${part.width.toFixed(4)} ${part.finished.thickness.toFixed(4)}`;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return [...groups.values()];
}

/** As many rows as give each the least length; what is left over joins the last. */
function inRows(parts: readonly RoughPart[], leastLength: number, kerf: number): RoughPart[][] {
  const rows: RoughPart[][] = [];
  let row: RoughPart[] = [];
  for (const part of parts) {
    row.push(part);
    if (row.reduce((sum, { length }) => sum + length + kerf, -kerf) < leastLength) continue;
    rows.push(row);
    row = [];
  }
  if (rows.length === 0) return [row];
  rows.at(-1)?.push(...row);
  return rows;
}

/** Parts by themselves that are all alike, as one entry with a count. */
function merged(parts: readonly CutPart[]): CutPart[] {
  const all: CutPart[] = [];
  for (const part of parts) {
    const same =
      part.sequence === undefined &&
      all.find((other) => other.sequence === undefined && other.name === part.name && other.length === part.length);
    if (same) same.count += part.count;
    else all.push({ ...part });
  }
  return all;
}
