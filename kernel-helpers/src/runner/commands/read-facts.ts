import { ShopError } from '../../measure/shop-error.js';
import { type BriefFact, readFact } from '../../piece/brief.js';
import { readInsideSizes } from '../../piece/inside-sizes.js';
import type { BegunWith } from '../../record/begun/begun-with.js';

import { type BriefQuestion, briefQuestions } from './brief-questions.js';

/**
 * What was typed behind the options of a new commission.
 *
 * @param values  text by option
 * @param commission.piece  what it is
 * @param commission.today  ISO day: nothing is promised for a day before
 * @throws ShopError  one line: the option, what was given, what is possible
 */
export function factsGiven(
  values: Readonly<Record<string, string>>,
  { piece, today }: { piece: string; today: string },
): BegunWith {
  const given = briefQuestions.flatMap((question) => {
    const typed = values[question.option];
    return typed === undefined ? [] : [{ question, typed }];
  });
  return Object.assign(
    {},
    ...given.map(({ question, typed }) => {
      const { option } = question;
      if (question.ofBoxes && piece !== 'box')
        throw new ShopError(`--${option} is said of a box; a ${piece} is sized in its own sheet, 02-sizing`);
      try {
        return answered(question, typed, today);
      } catch (error) {
        throw new ShopError((error as Error).message.replace(/^[^:]+/, `--${option}`));
      }
    }),
  );
}

/**
 * Reads one answer, and holds a promise against today.
 *
 * @throws ShopError  one line
 */
export function answered(question: BriefQuestion, typed: string, today: string): BegunWith {
  const facts = readers[question.option](typed);
  if (facts.promised !== undefined && facts.promised < today)
    throw new ShopError(`promised: "${typed}" given; possible: today, ${today}, or a later day`);
  return facts;
}

/** How each answer is read: as a brief will, and kept as it was typed. */
const readers: Record<BriefQuestion['option'], (typed: string) => BegunWith> = {
  client: fact('client'),
  inside(typed) {
    const sizes = readInsideSizes(typed);
    for (const [name, size] of Object.entries(sizes)) fact(name as keyof typeof sizes)(size);
    return sizes;
  },
  joint: fact('joint'),
  wood: fact('species'),
  personal: fact('personal'),
  letters: (letters) => ({ letters }),
  home: fact('home'),
  promised: fact('promised'),
};

function fact(name: Exclude<BriefFact, 'piece' | 'units'>): (typed: string) => BegunWith {
  return (typed) => {
    readFact(name, typed.trim());
    return { [name]: typed.trim() };
  };
}
