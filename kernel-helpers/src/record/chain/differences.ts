import { joinPath } from './json-value.js';

/** One value that is not what it was. `undefined` stands for a value that is not there. */
export interface Difference {
  /** `results.parts[0].width` */
  path: string;
  recorded: unknown;
  now: unknown;
}

/**
 * Every value that differs between two pieces of plain data, by name. Numbers within 1e-9 of each other, relative,
 * are the same: two machines may round the last bits differently.
 */
export function differences(recorded: unknown, now: unknown, path: string): Difference[] {
  if (typeof recorded === 'number' && typeof now === 'number') {
    return sameNumber(recorded, now) ? [] : [{ path, recorded, now }];
  }
  if (Array.isArray(recorded) && Array.isArray(now)) {
    return Array.from({ length: Math.max(recorded.length, now.length) }, (_, i) =>
      differences(recorded[i], now[i], `${path}[${i}]`),
    ).flat();
  }
  if (isObject(recorded) && isObject(now)) {
    const keys = new Set([...Object.keys(recorded), ...Object.keys(now)]);
    return [...keys].flatMap((key) => differences(own(recorded, key), own(now, key), joinPath(path, key)));
  }
  return recorded === now ? [] : [{ path, recorded, now }];
}

/** A difference in one line: `parts no. 1, width: 9.5, now 9.25`. */
export function differenceText({ path, recorded, now }: Difference): string {
  return `${pathText(path)}: ${valueText(recorded)}, now ${valueText(now)}`;
}

/** The path of a difference as one says it: `results.parts[0].width` is the width of the first part. */
export function pathText(path: string): string {
  const [, root = '', rest = ''] = /^(inputs|results|overrides)\b\.?(.*)$/s.exec(path) ?? ['', '', path];
  const text = rest
    .replace(/\["(.*?)"\]/g, '.$1')
    .replace(/^\./, '')
    .replaceAll('.', ', ')
    .replace(/\[(\d+)\]/g, (_, index) => ` no. ${Number(index) + 1}`);
  if (root === 'inputs') return text ? `${text} as typed` : 'what was typed';
  return root === 'overrides' ? `reason against ${text}` : text;
}

// Below 1e-12 of anything the trade measures, what is left of a subtraction is rounding, not a value.
const nothing = 1e-12;

function sameNumber(a: number, b: number): boolean {
  return Math.abs(a - b) <= Math.max(1e-9 * Math.max(Math.abs(a), Math.abs(b)), nothing);
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function own(object: Record<string, unknown>, key: string): unknown {
  return Object.hasOwn(object, key) ? object[key] : undefined;
}

function valueText(value: unknown): string {
  if (value === undefined) return 'not there';
  if (typeof value === 'number') return String(Number(value.toPrecision(10)));
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
