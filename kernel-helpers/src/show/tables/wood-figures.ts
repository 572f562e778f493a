import { species } from '../../wood/species.js';
import type { DisplayItem } from '../kit/display.js';
import { table } from '../kit/table.js';

/**
 * What is known of a wood before a board of it is seen: density and shrinkage, each with how sure it is.
 *
 * @param id  such as `walnut-black`
 * @throws ShopError  a wood that is not known
 */
export function woodFigures(id: string): DisplayItem {
  const { commonName, botanicalName, specificGravity, shrinkage } = species(id);
  const sure = (figure?: { fromMemory: boolean }) =>
    figure ? (figure.fromMemory ? 'from memory, not read in print' : 'read in print') : 'not published here';
  const percent = (figure: number | null | undefined) => (figure == null ? '' : `${figure} %`);
  return table({
    columns: ['Figure', 'Value', 'How sure'],
    rows: [
      ['Name', `${commonName} (${botanicalName})`, ''],
      ['Specific gravity at 12 % moisture', specificGravity?.at12?.toString(), sure(specificGravity)],
      ['Shrinkage green to dry, tangential', percent(shrinkage?.tangential), sure(shrinkage)],
      ['Shrinkage green to dry, radial', percent(shrinkage?.radial), sure(shrinkage)],
    ],
    caption: `${commonName}: averages of the species; single boards differ by 15 to 20 %`,
  });
}
