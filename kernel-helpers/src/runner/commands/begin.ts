import { join } from 'node:path';
import { type BriefFact, briefFacts } from '../../piece/brief.js';
import type { BegunWith } from '../../record/begun/begun-with.js';
import { newCommission } from '../../record/new-commission.js';
import { cardName, keptCard } from '../../record/shop-card/card-file.js';
import { usualShop } from '../../record/shop-card/shop-card.js';
import { eightWeeksOn } from '../../time/eight-weeks.js';
import type { Terminal } from './ask-brief.js';
import { factsGiven } from './read-facts.js';

/** How a commission of the maker's own is begun. */
export interface BeginOptions {
  root: string;
  templates: string;
  title: string;
  /** ISO day. */
  today: string;
  /** Text behind the options. */
  values: Readonly<Record<string, string>>;
  /** Where to ask for what the options do not say; nobody is asked without. */
  terminal?: Terminal;
  say: (line: string) => void;
}

/**
 * Begins a commission of the maker's own: with the facts given as options, and in a terminal with the answers to the other questions.
 *
 * @returns whether it was made; not when the questions were broken off
 * @throws ShopError  a fact that a brief could not read, or what {@link newCommission} refuses
 */
export async function begin({ root, templates, title, today, values, terminal, say }: BeginOptions): Promise<boolean> {
  const piece = values.piece ?? 'box';
  const given = factsGiven(values, { piece, today });
  let facts: BegunWith | undefined = given;
  if (terminal) {
    const { askBrief } = await import('./ask-brief.js');
    const { hours, closed } = keptCard(join(root, 'data', cardName)) ?? usualShop();
    const promised = eightWeeksOn(today, { hours, closed });
    facts = await askBrief(given, { piece, today, promised }, terminal);
    if (!facts) {
      say('Nothing was made.');
      return false;
    }
  }
  const { folder, sheets } = newCommission({ root, title, date: today, templates, piece, facts });
  const open = openFacts(facts, piece);
  say(`Made ${folder}`);
  say(
    open.length > 0
      ? `Open ${sheets[0]} in it (npm run lab, or VS Code) and fill in what is still open: ${open.join('; ')}.`
      : `Its brief is whole: ${sheets[0]} in it (npm run lab, or VS Code), then the sheets after it.`,
  );
  say(`npm run work -- "${title}" runs them all; with --decide, it decides them.`);
  return true;
}

/** The facts that a brief still lacks, in words. */
function openFacts(facts: BegunWith, piece: string): string[] {
  const ofBoxes: BriefFact[] = ['insideLength', 'insideWidth', 'insideDepth', 'joint'];
  const known: readonly BriefFact[] = ['piece', 'units', ...(piece === 'box' ? [] : ofBoxes)];
  return (Object.keys(briefFacts) as BriefFact[])
    .filter((fact) => !known.includes(fact) && facts[fact as keyof BegunWith] === undefined)
    .map((fact) => briefFacts[fact].replace(/(;|, such as).*/, ''));
}
