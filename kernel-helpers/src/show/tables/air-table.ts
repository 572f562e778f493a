import type { MonthOfAir } from '../../wood/air/air.js';
import { monthNames } from '../../wood/air/months.js';
import type { DisplayItem } from '../kit/display.js';
import { table } from '../kit/table.js';

/**
 * A year's air outdoors, and in the room where the piece will live, with what each month's humidity there is from.
 *
 * @param year.place  whose air it is
 * @param year.outdoors, year.room  twelve months each
 */
export function airTable(year: { place: string; outdoors: MonthOfAir[]; room: MonthOfAir[] }): DisplayItem {
  const { place, outdoors, room } = year;
  const celsius = (head: string) => ({ head, unit: '°C', decimals: 0 });
  const humidity = { head: 'humidity', unit: '%', decimals: 0 };
  const air = (month: MonthOfAir | undefined) => [month?.temperatureC, month && 100 * month.relativeHumidity];
  return table({
    columns: ['Month', celsius('Outdoors'), humidity, celsius('Indoors'), humidity, 'Set by'],
    rows: room.map((month, i) => [monthNames[i], ...air(outdoors[i]), ...air(month), month.setBy ?? 'readings']),
    caption: `${place}: monthly means outdoors, and the room`,
  });
}
