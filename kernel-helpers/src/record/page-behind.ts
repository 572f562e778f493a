import type { Entry, Head } from './chain/entry.js';
import { sha256 } from './chain/sha256.js';
import type { Commission } from './commission.js';
import type { Draft } from './drafts/draft.js';
import { keyFigures } from './key-figures/key-figures.js';
import { shownBy } from './key-figures/shown.js';
import type { Stand } from './sheet-news.js';
import { standing } from './stale.js';
import type { Store } from './store/store.js';

/** The page's file in a commission's folder. */
export const pageName = 'index.html';

/**
 * What a page says, in its head, of the record and the drafts that it shows: {@link pageShows} reads it.
 *
 * @param head  where the record ended
 * @internal
 */
export function pageMark(head: Head | undefined, drafts: readonly Draft[]): string {
  return `data-entry="${head?.seq ?? 0}:${head?.hash ?? 'none'}" data-drafts="${draftsSign(drafts)}"`;
}

/** The entry that a page goes up to, 0 for none, and whether it shows just this record and these drafts. @internal */
export function pageShows(
  html: string,
  head: Head | undefined,
  drafts: readonly Draft[],
): { seq: number; all: boolean } {
  const [mark, seq] = /<header data-entry="(\d+):\w+" data-drafts="\w+"/.exec(html) ?? [];
  return { seq: Number(seq ?? 0), all: mark === `<header ${pageMark(head, drafts)}` };
}

/** A commission's `decide` that says on its page what the page is behind by. @internal */
export function markingPage<D>(job: Commission<D>, store: Store): Commission<D>['decide'] {
  const { decide, entries, drafts } = job;
  return (what, decision) => {
    const decided = decide(what, decision);
    if (decided.outcome !== 'practice') markPage(store, { entries: entries(), drafts: drafts() });
    return decided;
  };
}

const mark = /<aside data-page-behind[^>]*>.*?<\/aside>\n?/gs;

/**
 * Puts at the head of a commission's page what was decided and drafted since it was written, so that nobody takes it for the
 * last word until it is written anew; one that shows all is left without.
 *
 * @internal
 */
export function markPage(store: Pick<Store, 'has' | 'read' | 'save'>, { entries, drafts }: Stand): void {
  if (!store.has(pageName)) return;
  const before = store.read(pageName).text;
  const plain = before.replace(mark, '');
  const shows = pageShows(plain, entries.at(-1), drafts);
  const after = shows.all
    ? plain
    : plain.replace(/<body[^>]*>/, (body) => `${body}\n${behindMark(shows.seq, { entries, drafts })}`);
  if (after !== before) store.save(pageName, after);
}

function behindMark(seq: number, { entries, drafts }: Stand): string {
  const shown = shownBy([...standing(entries), ...drafts]);
  const told = ({ what, results, ...of }: Entry | Draft) => {
    const { sentence } = keyFigures(what, results, shown);
    return `${what}${'seq' in of ? `, entry ${of.seq}` : ''}${sentence && `: ${sentence}`}`;
  };
  const since = entries
    .filter((entry) => entry.seq > seq)
    .map((entry) => (entry.withdraws ? `${entry.what}, entry ${entry.withdraws.seq}, withdrawn` : told(entry)));
  const said = [
    `This page is behind. It shows what was decided up to entry ${seq}.`,
    since.length > 0 ? `Since then: ${since.join('; ')}.` : '',
    drafts.length > 0 ? `Drafts, not decided: ${drafts.map(told).join('; ')}.` : '',
    'The next npm run work, pack or contents writes it anew.',
  ];
  const text = said.filter(Boolean).join(' ').replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return `<aside data-page-behind style="border: 3px double #000; padding: 0.6em 1em; margin: 0 0 1em">${text}</aside>`;
}

const draftsSign = (drafts: readonly Draft[]) => sha256(JSON.stringify(drafts)).slice(0, 16);
