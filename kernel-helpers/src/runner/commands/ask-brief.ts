import type { Readable, Writable } from 'node:stream';
import { isCancel, select, text } from '@clack/prompts';
import type { BegunWith } from '../../record/begun/begun-with.js';
import { type BriefQuestion, briefQuestions } from './brief-questions.js';
import { answered } from './read-facts.js';

/** Where questions are asked: the terminal unless told otherwise. */
export interface Terminal {
  input?: Readable;
  output?: Writable;
}

/**
 * Asks for what is not known yet of a new commission, one question after another; an answer that a brief could not read is asked
 * again. Nothing typed leaves a fact open.
 *
 * @param known  what was given already: not asked
 * @param commission.piece  what it is
 * @param commission.today  ISO day it is begun
 * @param commission.promised  ISO day that is offered for the promise
 * @returns all that is known; undefined when it was broken off with Ctrl-C
 */
export async function askBrief(
  known: BegunWith,
  { piece, today, promised }: { piece: string; today: string; promised: string },
  terminal: Terminal = {},
): Promise<BegunWith | undefined> {
  let facts = known;
  for (const question of briefQuestions) {
    if (isAnswered(question, facts) || (question.ofBoxes && piece !== 'box')) continue;
    const typed = await asked(question, { today, promised }, terminal);
    if (typed === undefined) return undefined;
    if (typed.trim() !== '') facts = { ...facts, ...answered(question, typed, today) };
  }
  return facts;
}

/** Whether a question needs no asking; letters are not asked of a box that stays plain. */
function isAnswered({ option }: BriefQuestion, facts: BegunWith): boolean {
  if (option === 'inside') return facts.insideLength !== undefined;
  if (option === 'wood') return facts.species !== undefined;
  if (option === 'letters') return facts.letters !== undefined || /^(|plain)$/i.test(facts.personal ?? '');
  return facts[option as keyof BegunWith] !== undefined;
}

async function asked(
  question: BriefQuestion,
  { today, promised }: { today: string; promised: string },
  terminal: Terminal,
): Promise<string | undefined> {
  const { option, asks: message, example } = question;
  if (option === 'joint') {
    const joint = await select({ ...terminal, message, options: joints });
    return isCancel(joint) ? undefined : joint;
  }
  const usual = option === 'promised' ? promised : option === 'personal' ? 'plain' : undefined;
  const typed = await text({
    ...terminal,
    message: usual ? `${message} (Enter for ${usual})` : `${message} (Enter to leave it open)`,
    placeholder: usual ?? `such as ${example.replaceAll('"', '')}`,
    ...(usual && { defaultValue: usual }),
    validate: (given = '') => (given.trim() === '' ? undefined : wrong(question, given, today)),
  });
  return isCancel(typed) ? undefined : (typed ?? '');
}

const joints = [
  { value: 'through dovetail', label: 'dovetail' },
  { value: 'finger joint', label: 'finger joint' },
  { value: '', label: 'not settled yet' },
];

/** Why an answer will not do, in one line. */
function wrong(question: BriefQuestion, typed: string, today: string): string | undefined {
  try {
    answered(question, typed, today);
    return undefined;
  } catch (error) {
    // What was given stands above it.
    return (error as Error).message.replace(/^[^:]+: (".*?" given; )?/, '');
  }
}
