import { species } from '../../wood/species.js';
import { gravityAt12, howSure } from '../../wood/specific-gravity.js';
import type { DisplayItem } from '../kit/display.js';
import { table } from '../kit/table.js';

/**
 * What is known of a wood before a board of it is seen: density and shrinkage, each with how sure it is.
 *
 * @param id  such as `walnut-black`
 * @throws ShopError  a wood that is not known
 */
export function woodFigures(id: string): DisplayItem {
  const { commonName, botanicalName, shrinkage } = species(id);
  const gravity = gravityAt12(id);
  const percent = (figure: number | null | undefined) => (figure == null ? '' : `${figure} %`);
  return table({
    columns: ['Figure', 'Value', 'How sure'],
    rows: [
      ['Name', `${commonName} (${botanicalName})`, ''],
      ['Specific gravity at 12 % moisture', gravity?.value.toFixed(2), howSure(gravity)],
      ['Shrinkage green to dry, tangential', percent(shrinkage?.tangential), howSure(shrinkage)],
      ['Shrinkage green to dry, radial', percent(shrinkage?.radial), howSure(shrinkage)],
    ],
    caption: `${commonName}: averages of the species; single boards differ by 15 to 20 %`,
  });
}
