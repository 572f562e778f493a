import type { Climate } from '../place/climates.js';
import { type MonthOfAir, yearOfAir } from './air.js';
import { readHygrometer } from './hygrometer.js';
import type { HygrometerReading, ReadingProblem } from './hygrometer-reading.js';
import type { Heating } from './room-air.js';

/** The air that a piece will live in. */
export interface HomeAir {
  /** The room's, January to December. */
  months: MonthOfAir[];
  /** And the place's, outdoors. */
  outdoors: MonthOfAir[];
  /** The readings that it comes from, and what is wrong with them, where there are any. */
  measured?: { readings: HygrometerReading[]; problems: ReadingProblem[] };
}

/**
 * The air of a piece's later home, as its brief says it: from the maker's readings of the room, else from the place and what the
 * house does to its air.
 *
 * @param home.home  a place's id, or a place of the maker's own
 * @param home.house  see {@link yearOfAir}
 * @param home.readings  name of a table of readings; nothing, or empty, for none
 * @param read  gives the text of that table, as `job.read` does
 * @throws ShopError  as {@link yearOfAir} and `readHygrometer`
 */
export function homeAir(
  home: { home: string | Climate; house?: Heating; readings?: string },
  { read }: { read: (file: string) => string },
): HomeAir {
  const outdoors = yearOfAir({ place: home.home });
  if (!home.readings) return { months: yearOfAir({ place: home.home, heating: home.house ?? {} }), outdoors };
  const measured = readHygrometer(read(home.readings));
  return { months: yearOfAir({ readings: measured.readings }), outdoors, measured };
}
