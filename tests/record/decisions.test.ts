import { expect, test } from 'vitest';
import type { SizedBox } from '../../kernel-helpers/src/piece/box/sized-box.js';
import type { SizedPiece } from '../../kernel-helpers/src/piece/piece.js';
import { type Decisions, decisionShapes, type HeldByShapes } from '../../kernel-helpers/src/record/decisions.js';

type LidRenamed = Omit<Decisions, 'lid' | 'sizing'> & {
  lid: Omit<Decisions['lid'], 'fittedWidth'> & { widthFitted: number };
  sizing: SizedBox | (SizedPiece & { kind: 'drawer' });
};

test('a field renamed in a decision alone does not compile', () => {
  // @ts-expect-error  the lid's shape asks for fittedWidth
  const renamed: HeldByShapes<LidRenamed> | undefined = undefined;
  expect(renamed).toBeUndefined();
  expect(decisionShapes.lid.safeParse({ widthFitted: 5 }).success).toBe(false);
});
