import { escapeHtml, wordsHtml } from '../kit/escape.js';

/** The words of the trade that a page links to. */
export interface PageGlossary {
  /** Where the page explains the word that a link to the glossary names; nothing for any other link, or a word unknown. */
  idOf(address: string): string | undefined;
  /** The words that were asked for, explained, as a section of the page; empty when there are none. */
  section(): string;
}

/** The section's own id. */
export const glossaryId = 'words';

/**
 * Takes note of the words that a page links to, so that it can explain those, and only those, at its end.
 *
 * @param glossary  what each word means, by the word
 */
export function pageGlossary(glossary: ReadonlyMap<string, string>): PageGlossary {
  const used = new Set<string>();
  return {
    idOf(address) {
      const anchor = /(?:^|\/)glossary\.ipynb#([\w-]+)$/.exec(address)?.[1];
      // JupyterLab names a heading by its words, joined by dashes.
      const word = [...glossary.keys()].find((each) => each.replaceAll(' ', '-') === anchor);
      if (word === undefined) return undefined;
      used.add(word);
      return idOfWord(word);
    },
    section() {
      if (used.size === 0) return '';
      const items = [...glossary].filter(([word]) => used.has(word)).map(item);
      return `<section class="sheet" id="${glossaryId}" aria-labelledby="${glossaryId}-title"><h2 id="${glossaryId}-title">Words of the trade</h2><dl class="words">${items.join('')}</dl></section>`;
    },
  };
}

const item = ([word, meaning]: [string, string]) =>
  `<div><dt id="${idOfWord(word)}">${escapeHtml(word)}</dt><dd>${wordsHtml(meaning)}</dd></div>`;

const idOfWord = (word: string) => `word-${word.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`;
