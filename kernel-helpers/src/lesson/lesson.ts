import { isCommission } from '../disk/daybook-folder.js';
import { askFirst, comparePrediction, type Prediction, type Question } from '../measure/prediction.js';
import { localTime, whoDecides } from '../record/chain/who-and-when.js';
import { type Attempt, appendAttempt, progressName, readProgress } from './progress-file.js';

/** What became of a question. */
export interface Predicted {
  /** Undefined as long as no figure is given. */
  prediction?: Prediction;
  /** What to tell the apprentice. */
  note: string;
}

/** A lesson as its sheet sees it: questions go in, what was tried comes out. */
export interface Lesson {
  readonly name: string;
  /** False in a commission's folder: a commission keeps no tries. */
  readonly kept: boolean;
  /**
   * Asks for the apprentice's own figure. Only when there is one is it compared with the computed figure, and kept with
   * its date.
   *
   * @throws ShopError  one line: a figure that cannot be read; a disk that refuses
   */
  predict(question: Question): Predicted;
  /** Whether a figure was given for a question, so that its working may be shown now. */
  tried(what: string): boolean;
  /** What was tried in this lesson, oldest first. */
  progress(): Attempt[];
}

/**
 * Opens a lesson. What is tried in it is kept in `progress.jsonl` in the lesson's folder: the apprentice's own file, which
 * git leaves alone.
 *
 * @param name  the lesson's own name, `01-reading-a-tape`
 * @param folder  where the lesson stands unless told otherwise; in a commission's folder nothing is kept
 * @param notify  where a notice goes; printed when left out
 */
export function openLesson(
  name: string,
  {
    folder = process.cwd(),
    notify = console.log,
  }: {
    folder?: string;
    notify?: (line: string) => void;
  } = {},
): Lesson {
  const kept = !isCommission(folder);
  if (!kept)
    notify(`This is a commission's folder: what you try here is not kept. Open the lesson in worksheets/lessons.`);
  const tried = new Map<string, Attempt>();

  return {
    name,
    kept,
    tried: (what) => tried.has(what),
    progress: () => (kept ? readProgress(folder).filter(({ lesson }) => lesson === name) : [...tried.values()]),

    predict(question) {
      const { what, unit } = question;
      tried.delete(what);
      const prediction = comparePrediction(question);
      if (!prediction) return printedAs({ note: askFirst(question) });
      const { yours, computed, hit, note } = prediction;
      const entry = {
        at: localTime(new Date()),
        who: whoDecides(),
        lesson: name,
        what,
        yours,
        computed,
        unit,
        hit,
        note,
      };
      if (kept) appendAttempt(folder, entry);
      tried.set(what, entry);
      return printedAs({ prediction, note: kept ? `${note} Kept in ${progressName}.` : note });
    },
  };
}

// A cell's last value is printed: the note alone, and nothing of the computed figure before its time.
function printedAs(predicted: Predicted): Predicted {
  const { note } = predicted;
  return Object.defineProperty(predicted, Symbol.for('nodejs.util.inspect.custom'), { value: () => note });
}
