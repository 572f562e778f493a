/**
 * The one error of ours: a single line in shop language that names the field, what was given and what is possible.
 * The kernel prints just that line, without a stack.
 */
export class ShopError extends Error {
  override readonly name = 'ShopError';

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return this.message;
  }
}
