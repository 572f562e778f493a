import type { Handle } from '../../../surface/handle/laid-out-handle.js';
import type { Lettering } from '../../../surface/lettering/laid-out-lettering.js';
import type { LidPoint } from '../../../surface/lettering/outline.js';
import { element, ink, quietInk } from '../../kit/svg.js';
import { letters, millimetres, type TemplatePiece, templateDocument } from '../kit/template-page.js';
import { handleShapes } from './lid-drawing.js';

/** Widest strip of paper, mm: what a page has room for. */
const strip = 184;
/** Paper that is drawn beyond what is cut, in. */
const beyond = 0.5;
const line = { stroke: ink, 'stroke-width': 0.2, fill: 'none' };
const dashes = { ...line, stroke: quietInk, 'stroke-dasharray': '4 1.5' };

/**
 * Lettering and handle at full size on paper, from the front end of the lid up, with the lid's middle line: to lay on the lid and
 * trace. A lid wider than a page comes in strips.
 *
 * @param lid.lettering  as `layOutLettering` returns it
 * @param lid.handle  as `layOutHandle` returns it
 * @returns a whole HTML document to print on A4 or Letter; it loads nothing
 */
export function letteringTemplate(lid: { lettering: Lettering; handle?: Handle | undefined }): string {
  const { lettering, handle } = lid;
  const { field, extent } = lettering;
  const back = Math.min(
    field.length,
    Math.max(lettering.outlines.length > 0 ? extent.back : 0, handle?.extent.back ?? 0) + beyond,
  );
  const width = field.width * millimetres;
  const height = back * millimetres;
  const place = ([x, y]: LidPoint) =>
    [x * millimetres, (back - y) * millimetres].map((mm) => Math.round(mm * 1e3) / 1e3);
  const points = (way: readonly LidPoint[]) => way.map((point) => place(point).join(',')).join(' ');
  const drawing = [
    ...lettering.outlines
      .flat()
      .map((contour) => element('polygon', { class: 'letter', points: points(contour), ...line })),
    ...(handle ? handleShapes(handle) : []).map((shape) =>
      element(shape.type === 'centre' ? 'polyline' : 'polygon', {
        class: 'handle',
        points: points(shape.points),
        ...line,
      }),
    ),
    element('path', { class: 'middle', d: `M${width / 2},0V${height}`, ...dashes }),
    element('path', { class: 'shoulder', d: `M0,0V${height}H${width}V0`, ...line }),
  ].join('');
  const strips = Math.ceil(width / strip);
  const across = width / strips;
  const pieces = Array.from({ length: strips }, (_, i): TemplatePiece => {
    const from = i * across;
    const joins = [from, from + across].filter((at) => at > 1e-9 && at < width - 1e-9);
    const marks = joins.map((at) => element('path', { class: 'join', d: `M${at},0V${height}`, ...dashes }));
    // A hair's breadth around, so that the outline is not cut in half.
    const moved = element('g', { transform: `translate(${0.2 - from} 0.2)` }, drawing + marks.join(''));
    const name =
      strips === 1 ? 'Lid from above, front end at the bottom' : `Strip ${i + 1} of ${strips}, from the left`;
    return {
      name,
      width: Math.max(across + 0.4, name.length * letters * 0.6),
      cutWidth: across + 0.4,
      length: height + 0.4,
      content: moved,
    };
  });
  return templateDocument(
    lettering.outlines.length > 0 ? 'Lettering' : 'Handle',
    'The lines at the sides are the shoulders of the tongue, the dashed line is the middle of the lid: lay it on the middle line, its lower edge on the front end.' +
      (strips > 1 ? ' Join the strips at their dashed edges.' : ''),
    pieces,
  );
}
