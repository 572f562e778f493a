import { formatMoney } from '../../money/money.js';
import { referenceOf } from '../../record/decision-row.js';
import type { CommissionCard } from '../../shop/commission-card.js';
import type { ShopBook } from '../../shop/shop-book.js';
import { woodName } from '../../wood/species.js';
import { escapeHtml } from '../kit/escape.js';
import { htmlPage } from '../kit/html-page.js';
import { pageStyle } from './page-style.js';
import { scrollable } from './scrollable-table.js';
import { bareShelf, type Shelf, shelfHtml, titleHtml } from './shelf.js';

const heads = [
  'Piece',
  'For',
  'State',
  'Promised',
  'Price',
  'To watch',
  'Hours',
  'Wood and joint',
  'Begun',
  'Last entry',
];

/** A sheet to learn from: a lesson, the sheet to start with, the glossary. */
export interface LearningSheet {
  title: string;
  /** What it asks or answers, in a sentence; empty where it says nothing of the kind. */
  question: string;
  /** What `npm run lab` opens it by: `glossary`. */
  opens: string;
}

/**
 * All commissions and all lessons on one page that needs nothing but a browser: what was made for whom, how far it is, when it is
 * promised, for how much, what is to be watched, what it took, and where each record ends; with links to pages, sheets and papers. Printed and put away, it is the shop's book of last entries outside of the computer.
 *
 * @param book  as `shopBook` gives it
 * @param shelves  what can be opened of each commission, by its name
 * @param learning  the sheets to learn from, in the order in which they are read
 * @returns HTML
 */
export function contentsPage(
  book: Pick<ShopBook, 'commissions' | 'problems' | 'empty'>,
  shelves: ReadonlyMap<string, Shelf>,
  learning: readonly LearningSheet[],
): string {
  const rows = [...book.commissions].reverse().map((card) => row(card, shelves.get(card.name) ?? bareShelf));
  const table =
    rows.length === 0
      ? '<p>No commission is recorded yet.</p>'
      : `<div class="output" ${scrollable('Wide table')}><table><thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${rows.join('\n')}</tbody></table></div>`;
  const title = 'Commissions and lessons';
  return htmlPage({
    title,
    style: `${pageStyle(title)}
body { max-width: 82rem; }
td { font-size: 0.875rem; }
td:first-child { min-width: 6.5rem; }
td.day { white-space: nowrap; }
tr:has(+ tr > td.shelf) > td { border-bottom: 0; }
ul.shelf { margin: 0.4em 0; padding-left: 1.1em; columns: 4 11rem; }
summary { cursor: pointer; }
@media print { tr > td.shelf:has(details:not([open])) { display: none; } }
`,
    body: `<header>
<h1>${title}</h1>
<dl><div><dt>In the book</dt><dd>${book.commissions.length}</dd></div><div><dt>Closed</dt><dd>${book.commissions.filter(({ worked }) => worked).length}</dd></div></dl>
</header>
<main>
${problems(book.problems)}
<h2 id="commissions">Commissions</h2>
${table}
${emptyHtml(book.empty, shelves)}
<p class="small">The reference of the last entry, on paper too, shows whether a record was cut short or written anew since: tamper-evident, not proof.</p>
<h2>To learn from</h2>
<p>These are sheets: each is opened in JupyterLab by the line behind it.</p>
<ul>
${learning.map(learningItem).join('\n')}
</ul>
</main>`,
  });
}

function learningItem({ title, question, opens }: LearningSheet): string {
  const asks = question && `: ${escapeHtml(question)}`;
  return `<li><strong>${escapeHtml(title)}</strong>${asks} <code>npm run lab -- ${escapeHtml(opens)}</code></li>`;
}

function emptyHtml(names: readonly string[], shelves: ReadonlyMap<string, Shelf>): string {
  if (names.length === 0) return '';
  const items = names.map((name) => {
    const shelf = shelves.get(name) ?? bareShelf;
    const drafted = shelf.drafts.length > 0 ? `: draft of ${escapeHtml(shelf.drafts.join(', '))}` : '';
    return `<li>${titleHtml(name, name, shelf)}${drafted}</li>`;
  });
  return `<p class="small">Nothing decided yet:</p><ul class="small">${items.join('')}</ul>`;
}

function row(card: CommissionCard, shelf: Shelf): string {
  const { name, date, piece, client, promised, species, joint, quoted, worked, watches, head } = card;
  const hours = [quoted && `${quoted.hours.toFixed(1)} estimated`, worked && `${worked.actual.toFixed(1)} taken`];
  const cells = [
    client ?? '',
    state(card, shelf),
    promised ?? '',
    quoted ? formatMoney(quoted.price) : '',
    watches.join('; '),
    hours.filter(Boolean).join(', '),
    [species && woodOf(species), joint].filter(Boolean).join(', '),
    date,
  ].map((text) => `<td${/^\d{4}-\d\d-\d\d$/.test(text) ? ' class="day"' : ''}>${escapeHtml(text)}</td>`);
  const open = shelfHtml(name, shelf);
  const main = `<tr><td>${titleHtml(name, piece ?? name, shelf)}</td>${cells.join('')}<td><code>${escapeHtml(referenceOf(head))}</code></td></tr>`;
  return open ? `${main}<tr><td class="shelf" colspan="${heads.length}">${open}</td></tr>` : main;
}

/** A wood as one says it; by its own name in the record where it was taken out of the woods since. */
function woodOf(species: string): string {
  try {
    return woodName(species);
  } catch {
    return species;
  }
}

function state({ answer, worked, quoted, lids, behind }: CommissionCard, { drafts }: Shelf): string {
  const measured = lids.length === 1 ? ', lid measured once' : `, lid measured ${lids.length} times`;
  const how = worked
    ? `closed ${worked.finished}${lids.length > 0 ? measured : ''}`
    : (answer ?? (quoted ? 'quoted' : 'in work'));
  const open = [
    behind.length > 0 && `behind: ${behind.join(', ')}`,
    drafts.length > 0 && `draft of ${drafts.join(', ')}`,
  ];
  return [how, ...open].filter(Boolean).join('; ');
}

function problems(list: ShopBook['problems']): string {
  if (list.length === 0) return '';
  const items = list.map(({ name, problem }) => `<li>${escapeHtml(`${name}: ${problem}`)}</li>`).join('');
  return `<div class="problems"><p><strong>■ Not counted:</strong></p><ul>${items}</ul></div>`;
}
