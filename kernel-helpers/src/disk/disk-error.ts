import { ShopError } from '../measure/shop-error.js';

/**
 * The operating system's refusal as a shop error: `<what>: the disk is full.` Any other error comes back as it is.
 *
 * @param what  what could not be done, `The record in ... cannot be written`
 * @internal
 */
export function diskError(error: unknown, what: string): unknown {
  if (!isSystemError(error)) return error;
  const { code, message } = error;
  if (code === 'ENOSPC' || code === 'EDQUOT') return new ShopError(`${what}: the disk is full.`);
  if (code === 'EROFS' || code === 'EACCES' || code === 'EPERM') {
    return new ShopError(`${what}: you may not write or read there.`);
  }
  return new ShopError(`${what}: ${message}.`);
}

/** @internal */
export function isSystemError(error: unknown): error is NodeJS.ErrnoException {
  return error instanceof Error && 'syscall' in error;
}
