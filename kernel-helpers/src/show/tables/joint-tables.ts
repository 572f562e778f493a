import type { BoxGroovePasses } from '../../joints/groove-passes.js';
import type { GrooveRun } from '../../joints/groove-runs.js';
import type { JointCompared } from '../../joints/joint-comparison.js';
import { jointMinutes } from '../../money/joint-minutes.js';
import type { SizedBox } from '../../piece/box/sized-box.js';
import { type DrawingOptions, lengthText } from '../drawing/kit/lengths.js';
import type { DisplayItem } from '../kit/display.js';
import { right, table } from '../kit/table.js';

/** Joints for one corner side by side: glue area, time, and what holds besides glue. */
export function jointTable(compared: readonly JointCompared[]): DisplayItem {
  const area = (head: string) => ({ head, unit: 'sq in', decimals: 1 });
  const minutes = (head: string) => ({ head, unit: 'min', decimals: 0 });
  return table({
    columns: [
      'Joint',
      ...['Long grain', 'End grain'].map(area),
      ...['A corner', 'Set-up'].map(minutes),
      'What holds it besides glue',
    ],
    rows: compared.map(({ joint, longGrain, endGrain, layout, holds }) => {
      const { corner, setUp } = jointMinutes(layout);
      return [joint, longGrain, endGrain, corner, setUp, holds];
    }),
    caption: 'One corner; minutes are starting figures, common practice, no source',
  });
}

/** Where each groove of a box begins and ends, and why. */
export function grooveRunTable(box: SizedBox, runs: readonly GrooveRun[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  const lengthOf = (board: string) => box.parts.find(({ name }) => name === board)?.length ?? 0;
  return table({
    columns: ['Board', 'Groove', right('Begins'), right('Ends'), right('Board is long'), 'Its ends', 'Why'],
    rows: runs.map(({ board, groove, from, to, ends, why }) => [
      ...[board, groove],
      ...[from, to, lengthOf(board)].map(show),
      ...[ends.join(', '), why],
    ]),
    caption:
      'Where each groove begins and ends, along the inside face: sides from their front end, front and back from the left; the two sides are mirror images',
  });
}

/** Where the fence or guide stands for each pass of each groove, and how deep each step goes. */
export function groovePassTable(passes: readonly BoxGroovePasses[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  return table({
    columns: ['Groove', 'Fence or guide to the near side of the bit', 'Depths'],
    rows: passes.map(({ name, fences, depths }) => [
      name,
      fences.map(show).join(', then '),
      depths.map(show).join(', '),
    ]),
    caption: 'Where the fence or guide stands for each pass, and how deep each step goes',
  });
}
