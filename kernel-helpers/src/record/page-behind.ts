import type { Entry, Head } from './chain/entry.js';
import type { Commission } from './commission.js';
import { keyFigures } from './key-figures/key-figures.js';
import { shownBy } from './key-figures/shown.js';
import type { Store } from './store/store.js';

/** The page's file in a commission's folder. */
export const pageName = 'index.html';

/** Where the page says which entry it goes up to: an attribute of its head, for {@link entryOfPage}. @internal */
export function pageMark({ seq, hash }: Head): string {
  return `data-entry="${seq}:${hash}"`;
}

/** The last entry that a page shows; undefined where it shows none, or was not written by these helpers. @internal */
export function entryOfPage(html: string): Head | undefined {
  const [, seq, hash] = /<header [^>]*data-entry="(\d+):([0-9a-f]{64})"/.exec(html) ?? [];
  return seq && hash ? { seq: Number(seq), hash } : undefined;
}

const mark = /<aside data-page-behind[^>]*>.*?<\/aside>\n?/gs;

/** A commission's `decide` that says on its page that the page is behind. @internal */
export function markingPage<D>({ decide }: Commission<D>, store: Store): Commission<D>['decide'] {
  return (what, decision) => {
    const decided = decide(what, decision);
    if (decided.outcome === 'recorded') markPageBehind(store);
    return decided;
  };
}

/**
 * Puts at the head of a commission's page what was decided since it was written, so that nobody takes it for the last word
 * until it is written anew.
 *
 * @internal
 */
export function markPageBehind(store: Store): void {
  if (!store.has(pageName)) return;
  const html = store.read(pageName).text;
  const entries = store.entries();
  const shows = entryOfPage(html);
  const since = entries.filter(({ seq }) => seq > (shows?.seq ?? 0));
  if (since.length === 0) return;
  const upTo = shows ? `It shows what was decided up to entry ${shows.seq}.` : 'It shows nothing that was decided.';
  const said = `This page is behind. ${upTo} Since then: ${sinceText(since, entries)}. The next npm run work, pack or contents writes it anew.`;
  const aside = `<aside data-page-behind style="border: 3px double #000; padding: 0.6em 1em; margin: 0 0 1em">${escaped(said)}</aside>`;
  store.save(
    pageName,
    html.replace(mark, '').replace(/<body[^>]*>/, (body) => `${body}\n${aside}`),
  );
}

function sinceText(since: readonly Entry[], entries: readonly Entry[]): string {
  const shown = shownBy(entries);
  return since
    .map(({ what, seq, results }) => {
      const { sentence } = keyFigures(what, results, shown);
      return `${what}, entry ${seq}${sentence && `: ${sentence}`}`;
    })
    .join('; ');
}

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
