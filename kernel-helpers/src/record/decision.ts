import * as z from 'zod';
import { type Finding, nothingGoesPast } from '../measure/finding.js';
import { parseLength } from '../measure/length.js';
import { ShopError } from '../measure/shop-error.js';
import { type Difference, differences } from './chain/differences.js';
import { type Entry, findingSchema } from './chain/entry.js';
import { toJsonValue } from './chain/json-value.js';

/** A decision as a sheet hands it over. */
export interface Decision<Results = unknown> {
  /** What it was worked out from: the sheet's parameters. */
  inputs: object;
  /** What it hands on to later sheets. */
  results: Results;
  /** What the design rules say of it. */
  findings?: Finding[];
  /** For each `stop` that it goes on in spite of: the finding's rule, and the reason. */
  overrides?: Record<string, string>;
  /** The seed of its random numbers, when it used any. */
  seed?: number;
}

/** The part of an entry that is the decision itself, apart from when, by whom and with what it was made. @internal */
export type DecisionContent = Pick<Entry, 'inputs' | 'results' | 'findings' | 'overrides' | 'seed'>;

/** A check of a decision's results; zod's types are of this form. @internal */
export interface Schema {
  safeParse(value: unknown): { success: boolean; error?: { issues: { path: PropertyKey[]; message: string }[] } };
}

/**
 * A decision as the record would keep it.
 *
 * @throws ShopError  when it holds something that a record cannot keep, when its results are not of the right shape,
 *                    or when a `stop` stands without a reason for going on
 * @internal
 */
export function decisionContent(what: string, decision: Decision, schema: Schema): DecisionContent {
  const content: DecisionContent = {
    inputs: toJsonValue(decision.inputs, `${what}: inputs`),
    results: toJsonValue(decision.results, `${what}: results`),
    findings: toJsonValue(decision.findings ?? [], `${what}: findings`),
    overrides: toJsonValue(decision.overrides ?? {}, `${what}: overrides`),
    seed: decision.seed === undefined ? undefined : toJsonValue(decision.seed, `${what}: seed`),
  };
  const wrong =
    schemaProblem(schema, content.results, 'results') ??
    schemaProblem(z.array(findingSchema), content.findings, 'findings') ??
    schemaProblem(z.record(z.string(), z.string()), content.overrides, 'overrides');
  if (wrong) throw new ShopError(`${what} is not recorded: ${wrong}.`);
  refuseStops(what, content);
  return content;
}

/** Where data is not of its shape, as `results.width: expected number`; undefined when it is. @internal */
export function schemaProblem(schema: Schema, value: unknown, where: string): string | undefined {
  const issue = schema.safeParse(value).error?.issues[0];
  return issue && `${[where, ...issue.path.map(String)].join('.')}: ${issue.message}`;
}

/**
 * What differs between two makings of one decision, by name. Where only inputs do, a length that is written otherwise (`13 1/4`
 * and `13.25 in`) is no difference.
 *
 * @internal
 */
export function contentDifferences(recorded: DecisionContent, now: DecisionContent): Difference[] {
  const inputs = differences(recorded.inputs, now.inputs, 'inputs');
  const others = (['results', 'findings', 'overrides', 'seed'] as const).flatMap((part) =>
    differences(recorded[part], now[part], part),
  );
  // Only then: a text that merely looks like a length may be what moved the results.
  return others.length === 0
    ? inputs.filter(({ recorded, now }) => !isSameLength(recorded, now))
    : [...inputs, ...others];
}

function isSameLength(one: unknown, other: unknown): boolean {
  return (['in', 'mm'] as const).some((bare) => {
    const [inches, otherInches] = [inchesIn(one, bare), inchesIn(other, bare)];
    return (
      inches !== undefined && otherInches !== undefined && Math.abs(inches - otherInches) <= 1e-9 * Math.abs(inches)
    );
  });
}

function inchesIn(text: unknown, bare: 'in' | 'mm'): number | undefined {
  try {
    return typeof text === 'string' ? parseLength(text, { bare, signed: true }) : undefined;
  } catch {
    return undefined;
  }
}

function refuseStops(what: string, { findings, overrides }: DecisionContent): void {
  for (const [rule, reason] of Object.entries(overrides)) {
    if (reason.trim() === '')
      throw new ShopError(`${what} is not recorded: the override of '${rule}' gives no reason.`);
    if (!findings.some((finding) => finding.rule === rule)) {
      const rules = findings.map((finding) => `'${finding.rule}'`).join(', ') || 'none';
      throw new ShopError(`${what} is not recorded: there is no rule '${rule}' to override; the rules here: ${rules}.`);
    }
  }
  const stops = findings.filter(({ verdict }) => verdict === 'stop');
  const absolute = stops.find((finding) => finding.absolute);
  if (absolute) throw new ShopError(`${refusal(what, absolute)} ${nothingGoesPast[absolute.absolute ?? 'unsafe']}`);
  const stop = stops.find(({ rule }) => !Object.hasOwn(overrides, rule));
  if (!stop) return;
  throw new ShopError(
    `${refusal(what, stop)} To go on in spite of it, give overrides: { ${JSON.stringify(stop.rule)}: 'your reason' }.`,
  );
}

function refusal(what: string, { rule, figures, reason, change }: Finding): string {
  const why = [figures, reason, change]
    .filter((text) => text)
    .map((text) => text?.replace(/\.$/, ''))
    .join('; ');
  return `${what} is not recorded: ${rule}: ${why}.`;
}
