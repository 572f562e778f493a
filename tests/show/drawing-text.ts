import type { DisplayItem } from '../../kernel-helpers/src/show/kit/display.js';
import type { Read } from './read-html.js';
import { type Label, pictureOf } from './read-svg.js';

/** A drawing, its labels as they stand: those turned to be read from the right too. */
export function drawingOf(shown: DisplayItem) {
  const picture = pictureOf(shown);
  const elements = picture.all('text').filter((element) => element.textContent !== '');
  return { ...picture, labels: picture.labels.map((label, i) => turned(label, elements[i] as Read)) };
}

function turned(label: Label, element: Read): Label {
  const group = element.parentElement?.getAttribute('transform') ?? '';
  const place = /translate\(([-\d.]+),([-\d.]+)\) rotate\(-90\)/.exec(group);
  if (!place) return label;
  // As the reader of pictures saw it, about the group's own origin, before it is turned a quarter to the left.
  const [x, y] = [Number(place[1]), Number(place[2])];
  const own = { left: label.left - x, right: label.right - x, top: label.top - y, bottom: label.bottom - y };
  return { text: label.text, left: x + own.top, right: x + own.bottom, top: y - own.right, bottom: y - own.left };
}
