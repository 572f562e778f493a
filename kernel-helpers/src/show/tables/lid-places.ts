import type { Handle } from '../../surface/handle/laid-out-handle.js';
import type { Lettering } from '../../surface/lettering/laid-out-lettering.js';
import { type DrawingOptions, lengthText } from '../drawing/kit/lengths.js';
import type { DisplayItem } from '../kit/display.js';
import { table } from '../kit/table.js';

/**
 * Where lettering and handle lie on the lid, and where the handle's bit goes: from the front end and from the middle line, both
 * of which are there before the lid is planed to width.
 *
 * @param lid.lettering  as `layOutLettering` returns it
 * @param lid.handle  as `layOutHandle` returns it
 */
export function lidPlaces(lid: { lettering: Lettering; handle?: Handle }, options: DrawingOptions = {}): DisplayItem {
  const { lettering, handle } = lid;
  const show = lengthText(options);
  const middle = lettering.field.width / 2;
  const side = (x: number) => {
    const off = x - middle;
    return Math.abs(off) < 1e-9 ? 'on the line' : `${show(Math.abs(off))} ${off < 0 ? 'left' : 'right'}`;
  };
  const row = (what: string, front: number, back: number, left: number, right: number) => [
    what,
    ...[show(front), show(back), side(left), side(right)],
  ];
  const lies = (what: string, { front, back, left, right }: Lettering['extent']) => row(what, front, back, left, right);
  const path = handle?.toolpath;
  return table({
    columns: ['What', 'From the front', 'to', 'From the middle line', 'to'],
    rows: [
      ...(lettering.outlines.length > 0 ? [lies('lettering', lettering.extent)] : []),
      ...(handle ? [lies(handle.kind, handle.extent)] : []),
      ...(handle && path ? [row("middle of the handle's bit", path[0][1], path[1][1], path[0][0], path[1][0])] : []),
    ],
    caption: handle?.toolpath
      ? `Places on the lid. The handle's bit goes down to ${show(handle.depth)} in ${handle.passes} ${handle.passes === 1 ? 'pass' : 'passes'}`
      : 'Places on the lid',
  });
}
