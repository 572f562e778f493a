import { dayNumber, isoDay, weekday } from '../../measure/day.js';
import type { BriefFact } from '../../piece/brief.js';
import type { BegunValue } from './parameters-cell.js';

/** What is known of a commission when it is begun, as it was typed; a fact that is not stays open in its sheet. */
export type BegunWith = { readonly [fact in Exclude<BriefFact, 'piece' | 'units'>]?: string } & {
  /** What is cut into the lid of a box; nothing where it is left out, but for what stands in quotation marks in `personal`. */
  readonly letters?: string;
};

/**
 * What parameters begin with in a commission of one's own, in whichever sheet they stand: the facts of its brief, nothing of the
 * demonstration's boards and letters, and days that are its own.
 *
 * @param facts  see {@link BegunWith}
 * @param commission.title  what it is called
 * @param commission.date  ISO day it is begun
 * @internal
 */
export function begunParameters(
  facts: BegunWith,
  { title, date }: { title: string; date: string },
): Record<string, BegunValue> {
  const { letters = quoted(facts.personal), ...brief } = facts;
  const open = { client: '', promised: '', species: '', joint: '', personal: '', home: '' };
  const sizes = { insideLength: '', insideWidth: '', insideDepth: '' };
  const days = { today: date, date, start: isoDay(nextMonday(dayNumber(date))) };
  return {
    piece: title,
    ...open,
    ...sizes,
    ...brief,
    text: letters,
    fittingMoisture: '',
    boards: [],
    sheets: [],
    ...days,
  };
}

/** A text without what is said of the demonstration alone: that its names, boards and prices are invented. @internal */
export function withoutInvented(text: string): string {
  return text.replace(/ \(invented\)/g, '').replace(/(^|(?<=[.!?] ))[^.!?\n]*\binvented\b[^.!?\n]*[.!?] ?/gm, '');
}

/** The first words in quotation marks: `the letters "A. E." and a rose`. */
function quoted(personal = ''): string {
  return /["“”]([^"“”]+)["“”]/.exec(personal)?.[1]?.trim() ?? '';
}

function nextMonday(day: number): number {
  return day + 7 - weekday(day);
}
