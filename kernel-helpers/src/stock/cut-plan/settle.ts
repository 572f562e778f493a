import type { GridBoard, GridPart, GridPlace, GridSection, GridStrip } from './grid-job.js';

/**
 * Pushes strips toward the lower edge and parts toward the marked end as far as the defects let them, so that no cut is made
 * for a sliver.
 *
 * @internal
 */
export function settle(section: GridSection, board: GridBoard, parts: GridPart[]): GridSection {
  const clear = ({ part, x, y }: GridPlace) => {
    const { length, width } = parts[part] as GridPart;
    return !board.defects.some(({ x1, x2, y1, y2 }) => x < x2 && x + length > x1 && y < y2 && y + width > y1);
  };
  const strips: GridStrip[] = [];
  let floor = 0;
  for (const strip of section.strips) {
    const down = strip.y1 - floor;
    const lowered = strip.places.map((place) => ({ ...place, y: place.y - down }));
    const settled = lowered.every(clear) ? { y1: floor, y2: strip.y2 - down, places: lowered } : strip;
    let end = section.x1;
    const places = settled.places.map((place) => {
      const pushed = { ...place, x: end };
      const at = clear(pushed) ? pushed : place;
      end = at.x + (parts[at.part] as GridPart).length;
      return at;
    });
    strips.push({ ...settled, places });
    floor = settled.y2;
  }
  return { ...section, strips };
}
