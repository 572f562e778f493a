import { ShopError } from '../../measure/shop-error.js';

/**
 * A copy of a value as the record will give it back: only numbers, text, true/false, null, lists and plain objects.
 * A field that is `undefined` is the same as a field left out.
 *
 * @param where  what to call the value in the message, `inputs`
 * @throws ShopError  naming the field that a record cannot keep: NaN and Infinity would come back as nothing,
 *                    dates and maps as something else
 */
export function toJsonValue<T>(value: T, where: string): T {
  const inside: object[] = [];
  const look = (item: unknown, path: string): void => {
    if (item === null || typeof item === 'string' || typeof item === 'boolean') return;
    if (typeof item === 'number') {
      if (!Number.isFinite(item))
        refuse(path, `${item}`, 'a number that the arithmetic can give; look for a division by zero or a missing size');
      return;
    }
    if (typeof item !== 'object') refuse(path, item === undefined ? 'nothing (undefined)' : `a ${typeof item}`);
    if (inside.includes(item)) refuse(path, 'a thing that contains itself');
    inside.push(item);
    if (Array.isArray(item)) {
      for (let i = 0; i < item.length; i++) look(item[i], `${path}[${i}]`);
    } else {
      if (!isPlainObject(item)) refuse(path, `a ${item.constructor?.name ?? 'special object'}`);
      if (Object.getOwnPropertySymbols(item).length > 0) refuse(path, 'an object with symbols for names');
      for (const [key, field] of Object.entries(item)) if (field !== undefined) look(field, joinPath(path, key));
    }
    inside.pop();
  };
  look(value, where);
  return JSON.parse(JSON.stringify(value));
}

/** A field's path as it is written in code: `results.parts[0].width`, `overrides["thin wall"]`. */
export function joinPath(path: string, key: string): string {
  return /^[A-Za-z_$][\w$]*$/.test(key) ? `${path}.${key}` : `${path}[${JSON.stringify(key)}]`;
}

/** Makes a value and all within it unchangeable. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    for (const field of Object.values(value)) deepFreeze(field);
    Object.freeze(value);
  }
  return value;
}

function isPlainObject(item: object): boolean {
  const prototype = Object.getPrototypeOf(item);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}

function refuse(
  path: string,
  given: string,
  possible = 'numbers, text, true or false, null, lists and plain objects',
): never {
  throw new ShopError(`${path} is ${given}, which the record cannot keep; possible: ${possible}.`);
}
