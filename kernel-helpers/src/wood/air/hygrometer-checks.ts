import type { ReadingProblem } from './hygrometer-reading.js';
import type { NumberedReading } from './hygrometer-row.js';

/** Days without any change from which a sensor may be stuck: common practice, no source. */
const stuckDays = 5;

/** Puts readings in order of date and looks for rows out of order, doubled rows, days without one, values that do not move. @internal */
export function readingChecks(read: NumberedReading[]): { kept: NumberedReading[]; problems: ReadingProblem[] } {
  const sorted = [...read].sort((a, b) => a.date.localeCompare(b.date));
  const { kept, problems } = withoutDoubles(sorted);
  return { kept, problems: [...problems, ...outOfOrder(read), ...gaps(kept), ...stuck(kept)] };
}

function withoutDoubles(sorted: NumberedReading[]): { kept: NumberedReading[]; problems: ReadingProblem[] } {
  const kept: NumberedReading[] = [];
  const problems: ReadingProblem[] = [];
  for (const reading of sorted) {
    const first = kept[kept.length - 1];
    if (first?.date !== reading.date) {
      kept.push(reading);
      continue;
    }
    const same =
      first.temperatureC === reading.temperatureC && first.relativeHumidity === reading.relativeHumidity
        ? 'the same as'
        : 'with other values than';
    problems.push({
      line: reading.line,
      what: `${reading.date} stands there twice, ${same} line ${first.line}; line ${first.line} is kept`,
    });
  }
  return { kept, problems };
}

function outOfOrder(read: NumberedReading[]): ReadingProblem[] {
  return read.flatMap(({ line, date }, index) => {
    const before = read[index - 1];
    return before && date < before.date
      ? [{ line, what: `${date} comes after ${before.date} (line ${before.line}); it is put in its place` }]
      : [];
  });
}

/** The day of a reading, which may have a time behind it; NaN where it is none. @internal */
export function readingDay(date: string): number {
  return Date.parse(date.slice(0, 10)) / 86_400_000;
}

function gaps(kept: NumberedReading[]): ReadingProblem[] {
  return kept.flatMap((reading, index) => {
    const before = kept[index - 1];
    const missing = before ? readingDay(reading.date) - readingDay(before.date) - 1 : 0;
    if (!before || missing < 1) return [];
    const days = missing === 1 ? '1 day' : `${missing} days`;
    return [
      {
        line: reading.line,
        what: `no reading for ${days} between ${before.date.slice(0, 10)} (line ${before.line}) and ${reading.date.slice(0, 10)}`,
      },
    ];
  });
}

function stuck(kept: NumberedReading[]): ReadingProblem[] {
  return (['temperature', 'humidity'] as const).flatMap((what) => {
    const runs: NumberedReading[][] = [];
    for (const reading of kept) {
      const run = runs[runs.length - 1];
      if (run?.[0]?.written[what] === reading.written[what]) run.push(reading);
      else runs.push([reading]);
    }
    return runs.flatMap((run) => {
      const days = new Set(run.map(({ date }) => date.slice(0, 10))).size;
      const first = run[0] as NumberedReading;
      const last = run[run.length - 1] as NumberedReading;
      if (days < stuckDays) return [];
      return [
        {
          line: first.line,
          what: `${what} stays at ${first.written[what]} for ${days} days (lines ${first.line} to ${last.line}): is the sensor stuck? The readings are kept`,
        },
      ];
    });
  });
}
