import { type Difference, pathText } from '../chain/differences.js';
import type { Entry, Versions } from '../chain/entry.js';
import { contentDifferences } from '../decision.js';
import { latest } from '../stale.js';

/** How one decision came out when its sheet was run again. */
export interface Compared {
  what: string;
  /** `missing`: recorded, but not decided in the run; `new`: decided in the run, but not recorded. */
  outcome: 'same' | 'moved' | 'missing' | 'new';
  /** The values that moved, by name. */
  moved: Difference[];
  /** What may have moved them, as far as it can be told; empty when nothing moved. */
  why: string[];
}

/**
 * Compares what the record says with what running the sheets again gives, decision by decision, each in its latest
 * form. Numbers within 1e-9 of each other, relative, are the same.
 *
 * @param recorded  entries of the commission's record
 * @param rehearsed  entries of the record that the run wrote
 */
export function compareRecords(recorded: readonly Entry[], rehearsed: readonly Entry[]): Compared[] {
  const kinds = [...new Set([...recorded, ...rehearsed].map((entry) => entry.what))];
  const compared = kinds.flatMap((what) => {
    const [before, now] = [latest(recorded, what), latest(rehearsed, what)];
    // Withdrawn, and no sheet decides it any more.
    return before || now ? compare(what, before, now) : [];
  });
  for (const each of compared) {
    if (each.outcome !== 'moved') continue;
    for (const need of Object.keys(latest(rehearsed, each.what)?.needs ?? {})) {
      if (compared.some((other) => other.what === need && other.outcome === 'moved')) each.why.push(`${need} moved`);
    }
    if (each.why.length === 0) each.why.push('cause unknown: inputs, versions and data are as recorded');
  }
  return compared;
}

/** Of the decisions that moved, those where it began: with a reason of their own, not only an earlier decision that moved. */
export function origins(compared: readonly Compared[]): Compared[] {
  const followed = new Set(compared.map(({ what }) => `${what} moved`));
  return compared.filter(({ why }) => why.some((reason) => !followed.has(reason)));
}

function compare(what: string, before: Entry | undefined, now: Entry | undefined): Compared {
  if (!before || !now) return { what, outcome: before ? 'missing' : 'new', moved: [], why: [] };
  const moved = contentDifferences(before, now);
  if (moved.length === 0) return { what, outcome: 'same', moved, why: [] };
  const inputs = moved
    .filter(({ path }) => /^(inputs|seed|overrides)\b/.test(path))
    .map(({ path }) => `${pathText(path)} changed`);
  return { what, outcome: 'moved', moved, why: [...inputs, ...versionChanges(before.versions, now.versions)] };
}

function versionChanges(before: Versions, now: Versions): string[] {
  const change = (name: string, was?: string, is?: string) =>
    was === is ? [] : `${name} was ${was ?? 'not used'}, now ${is ?? 'not used'}`;
  const files = [...new Set([...Object.keys(before.data), ...Object.keys(now.data)])];
  return [
    change('kernel-helpers', before.helpers, now.helpers),
    change('build of kernel-helpers', before.build, now.build),
    files.flatMap((file) => change(`data file ${file}`, before.data[file], now.data[file])),
    change('Node', before.node, now.node),
    change('tslab', before.tslab, now.tslab),
    change('TypeScript', before.typescript, now.typescript),
  ].flat();
}
