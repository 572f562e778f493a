import { referenceOf } from '../../record/decision-row.js';
import type { Draft } from '../../record/drafts/draft.js';
import { draftMark } from '../../record/drafts/draft-paper.js';
import { pageMark } from '../../record/page-behind.js';
import { longDay } from '../kit/day-text.js';
import { escapeHtml, wordsHtml } from '../kit/escape.js';
import { htmlPage } from '../kit/html-page.js';
import { glossaryId, pageGlossary } from './page-glossary.js';
import { pageStyle } from './page-style.js';
import { type PageRecord, problemsHtml, recordSection } from './record-section.js';
import { type SheetNotebook, sheetSection } from './sheet-section.js';

/** All that goes onto a commission's page. */
export interface CommissionPage {
  /** What the piece is called. */
  title: string;
  /** Who it is for. */
  client?: string;
  /** Day of the commission, `2026-11-25`. */
  date?: string;
  /** The executed sheets, in order, with their names: `01-brief`. */
  sheets: readonly { name: string; notebook: SheetNotebook }[];
  record: PageRecord;
  /** A digest of the sheets as they stood in their files. */
  sheetsDigest?: string;
  /** What the words of the trade mean, by the word; those that the sheets link to are explained at the end. */
  glossary?: ReadonlyMap<string, string>;
}

/**
 * A commission as one page that needs nothing but a browser: prose, parameters, working, pictures, findings and the record.
 * It carries its own style, pictures and mathematics, loads nothing, runs nothing and prints on A4 and Letter.
 * The same commission gives the same page, byte for byte.
 *
 * @returns HTML
 */
export function commissionPage(content: CommissionPage): string {
  const { title, client, date, sheets, record, sheetsDigest, glossary = new Map() } = content;
  const words = pageGlossary(glossary);
  const sections = sheets.map(({ name, notebook }) => sheetSection(name, notebook, words));
  const explained = words.section();
  const parts = [
    ...sections,
    { id: 'record', title: 'Record of decisions' },
    ...(explained ? [{ id: glossaryId, title: 'Words of the trade' }] : []),
  ];
  const contents = parts.map(({ id, title }) => `<li><a href="#${id}">${escapeHtml(title)}</a></li>`);
  const facts = [
    ['For', client],
    ['Begun', date && longDay(date)],
    ['Record', record.head && `last entry ${referenceOf(record.head)}`],
  ].filter((fact): fact is [string, string] => Boolean(fact[1]));
  const { head, drafts = [] } = record;
  const marks = `${pageMark(head, drafts)}${sheetsDigest ? ` data-sheets="${sheetsDigest}"` : ''}`;
  const whole = client ? `${title} for ${client}` : title;
  return htmlPage({
    title: whole,
    style: pageStyle(whole),
    body: `${drafts.length > 0 ? draftMark(escapeHtml(draftsText(drafts))) : ''}<a class="skip" href="#sheets">To the sheets</a>
<header ${marks}>
<h1>${escapeHtml(title)}</h1>
<dl>${facts.map(([name, value]) => `<div><dt>${name}</dt><dd>${wordsHtml(value)}</dd></div>`).join('')}</dl>
</header>
${problemsHtml(record.problems)}
<nav aria-labelledby="contents-title">
<h2 id="contents-title">Contents</h2>
<ol>${contents.join('')}</ol>
</nav>
<main id="sheets">
${sections.map(({ html }) => html).join('\n')}
${recordSection(record)}
${explained}
</main>`,
  });
}

function draftsText(drafts: readonly Draft[]): string {
  const names = drafts.map(({ what }) => what).join(', ');
  return `Draft: ${names}. Worked out and not decided: promise nothing from this page, and do not work from it.`;
}
