import { ShopError } from '../../measure/shop-error.js';
import { fromBase64 } from './base64.js';
import type { DisplayItem } from './display.js';

const picture = /src="data:image\/svg\+xml;base64,([A-Za-z0-9+/=]+)"/;

/**
 * The picture of a drawing or a plot as an SVG file of its own, to keep beside the sheets: `job.save('views.svg', svgFile(...))`.
 *
 * @param shown  as `pieceDrawing`, `explodedView` and every plot return it
 * @returns the file's text; it loads nothing
 * @throws ShopError  when there is no picture in it
 */
export function svgFile(shown: DisplayItem): string {
  const [, data] = picture.exec(shown.text) ?? [];
  if (!data) throw new ShopError('svgFile: there is no picture in this; possible: a drawing or a plot');
  return `<?xml version="1.0" encoding="UTF-8"?>\n${fromBase64(data)}\n`;
}
