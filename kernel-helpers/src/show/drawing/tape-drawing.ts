import { formatLength, parseLength } from '../../measure/length.js';
import { ShopError } from '../../measure/shop-error.js';
import type { DisplayItem } from '../kit/display.js';
import { figure } from '../kit/figure.js';
import { element, fontSize, ink, label, line, quietInk, svgPicture } from '../kit/svg.js';
import { arrowhead } from './kit/lines.js';

const width = 720;
const margin = 24;
const top = 62;
const foot = 128;
/** The coarser the fraction, the longer its mark, px. */
const markLength: Record<number, number> = { 1: 46, 2: 36, 4: 28, 8: 20, 16: 12 };
const longest = 12;

/**
 * A piece of tape from its hook, sixteen marks to the inch, with arrows that stand at lengths to be read. The words for those
 * who cannot see it count the marks, as an eye would, and leave the reading to the reader.
 *
 * @param tape.inches  how much of the tape, 1 to 12
 * @param tape.arrows  a length for each arrow's letter, at a sixteenth: `{ A: '1 3/16 in' }`, or inches
 * @throws ShopError  an arrow off the tape or between two marks
 */
export function tapeDrawing(tape: { inches: number; arrows: Readonly<Record<string, number | string>> }): DisplayItem {
  const { inches, arrows } = tape;
  if (!(Number.isInteger(inches) && inches >= 1 && inches <= longest))
    throw new ShopError(`inches: ${inches} given; possible: a whole number from 1 to ${longest}`);
  const px = (at: number) => margin + (at / inches) * (width - 2 * margin);
  const ticks = Array.from({ length: inches * 16 + 1 }, (_, sixteenth) => {
    const coarsest = [1, 2, 4, 8].find((denominator) => Number.isInteger((sixteenth / 16) * denominator)) ?? 16;
    const x = px(sixteenth / 16);
    return line(x, top, x, top + (markLength[coarsest] as number), { stroke: coarsest === 16 ? quietInk : ink });
  });
  const numbers = Array.from({ length: inches }, (_, inch) =>
    label(`${inch + 1}`, px(inch + 1) - 7, foot - fontSize, { 'text-anchor': 'end', 'font-weight': 'bold' }),
  );
  const pointers = Object.entries(arrows).map(([letter, length]) => ({ letter, ...placeOf(letter, length, inches) }));
  const drawn = pointers.map(
    ({ letter, at }) =>
      label(letter, px(at), 14, { 'text-anchor': 'middle', 'font-weight': 'bold' }) +
      line(px(at), 26, px(at), top - 2) +
      arrowhead(px(at), top - 1, 'down'),
  );
  const ground = element('rect', {
    x: px(0),
    y: top,
    width: px(inches) - px(0),
    height: foot - top,
    fill: '#f3f3f3',
    stroke: ink,
  });
  const read = pointers.map(({ letter, whole, marks }) => `${letter} stands ${marks} marks past ${whole} in`);
  return figure({
    svg: svgPicture(width, foot + margin / 2, [ground, ...ticks, ...numbers, ...drawn]),
    width,
    alt: `${inches} inches of tape, sixteen marks to the inch. ${read.join('; ')}.`,
    caption:
      'The hook is at the left. The longest marks are inches, then come halves, quarters, eighths, and the shortest are sixteenths.',
  });
}

function placeOf(letter: string, length: number | string, inches: number) {
  const at = typeof length === 'number' ? length : parseLength(length);
  if (at >= 0 && at <= inches && Number.isInteger(at * 16)) return { at, whole: Math.floor(at), marks: (at % 1) * 16 };
  const last = formatLength(inches, { system: 'tape' });
  throw new ShopError(`arrows: ${letter} at "${length}" given; possible: a sixteenth from 0 to ${last}`);
}
