import type * as z from 'zod';
import { oneOf } from '../../measure/parameters.js';
import type { SizedBox } from '../../piece/box/sized-box.js';

/** The top of a lid that can be lettered: what lies inside its rabbets. Inches, x from its left edge, y from its front end. */
export interface LidField {
  width: number;
  length: number;
  thickness: number;
  /** Thickness of the tongue, and how far the rabbet around it is wide. */
  tongueThickness: number;
  rabbet: number;
}

/** Which way the text runs on the lid. */
export type TextRuns = 'side to side' | 'front to back';

/** @internal */
export const textRuns: z.ZodType<TextRuns> = oneOf(
  ['side to side', 'front to back'],
  'which way the text runs; side to side reads from the front, front to back from the right-hand side',
);

/** The field of a box's lid. @internal */
export function lidField({ parts, design }: SizedBox): LidField {
  const lid = parts.find(({ name }) => name === 'lid');
  const rabbet = design.lidGrooveDepth;
  return {
    width: (lid?.width ?? design.insideWidth) - 2 * rabbet,
    length: (lid?.length ?? design.insideLength) - rabbet,
    thickness: design.lidThickness,
    tongueThickness: design.tongueThickness,
    rabbet,
  };
}
