/** One reading of the maker's own hygrometer. */
export interface HygrometerReading {
  /** ISO form, with the time where there was one: `2026-02-14` or `2026-02-14T08:30`. As the clock on the wall showed it. */
  date: string;
  temperatureC: number;
  /** 0 to 1. */
  relativeHumidity: number;
}

/** Something in a table of readings that the maker should look at. */
export interface ReadingProblem {
  /** Line of the file, the first is 1. */
  line: number;
  /** What is wrong, and what was done about it. */
  what: string;
}

/** Units that a table leaves unsaid. */
export interface HygrometerUnits {
  temperature?: '°C' | '°F';
  humidity?: '%' | 'fraction';
}
