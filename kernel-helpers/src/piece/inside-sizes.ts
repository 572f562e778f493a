import { ShopError } from '../measure/shop-error.js';

/** A box's inside, as texts that a brief reads. */
export interface InsideSizes {
  insideLength: string;
  insideWidth: string;
  insideDepth: string;
}

/**
 * Reads three sizes said in one breath, `13 1/4 x 8 x 5 in`: front to back, side to side, depth under the lid. A unit that stands
 * behind the last alone is that of all three; inches, where none is said.
 *
 * @throws ShopError  one line, when there are not three
 * @internal
 */
export function readInsideSizes(typed: string): InsideSizes {
  const parts = typed.split(/\s*(?:[x×*]|\bby\b)\s*/i).map((part) => part.trim());
  const [length, width, depth] = parts;
  if (parts.length !== 3 || !length || !width || !depth)
    throw new ShopError(
      `inside: "${typed}" given; possible: three sizes, such as 13 1/4 x 8 x 5 in (front to back, side to side, clear depth under the lid)`,
    );
  const unit = /[^\d\s/.,½¼¾⅛⅜⅝⅞-].*$/.exec(depth)?.[0] ?? 'in';
  const withUnit = (size: string) => (/[^\d\s/.,½¼¾⅛⅜⅝⅞-]/.test(size) ? size : `${size} ${unit}`);
  return { insideLength: withUnit(length), insideWidth: withUnit(width), insideDepth: withUnit(depth) };
}
