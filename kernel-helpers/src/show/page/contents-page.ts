import { formatMoney } from '../../money/money.js';
import { shortHash } from '../../record/decision-row.js';
import type { CommissionCard } from '../../shop/commission-card.js';
import type { ShopBook } from '../../shop/shop-book.js';
import { escapeHtml } from '../kit/escape.js';
import { htmlPage } from '../kit/html-page.js';
import { pageStyle } from './page-style.js';
import { scrollable } from './scrollable-table.js';

/** A sheet to learn from: a lesson, the sheet to start with, the glossary. */
export interface LearningSheet {
  title: string;
  /** What it asks or answers, in a sentence; empty where it says nothing of the kind. */
  question: string;
  /** Its address from the page, not yet encoded: `../../worksheets/glossary.ipynb`. */
  path: string;
}

/**
 * All commissions and all lessons on one page that needs nothing but a browser: what was made for whom, of what, for how much,
 * what it took, and where each record ends. Printed and put away, it is the shop's book of last entries outside of the computer.
 *
 * @param book  as `shopBook` gives it
 * @param pages  names of the commissions that have a page of their own
 * @param learning  the sheets to learn from, in the order in which they are read
 * @returns HTML
 */
export function contentsPage(
  book: Pick<ShopBook, 'commissions' | 'problems' | 'empty'>,
  pages: ReadonlySet<string>,
  learning: readonly LearningSheet[],
): string {
  const rows = [...book.commissions].reverse().map((card) => row(card, pages.has(card.name)));
  const heads = ['Begun', 'Piece', 'For', 'Wood and joint', 'Price', 'Hours', 'State', 'Last entry'];
  const table =
    rows.length === 0
      ? '<p>No commission is recorded yet.</p>'
      : `<div class="output" ${scrollable('Wide table')}><table><thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${rows.join('\n')}</tbody></table></div>`;
  const title = 'Commissions and lessons';
  return htmlPage({
    title,
    style: `${pageStyle(title)}
body { max-width: 68rem; }
td { font-size: 0.875rem; }
`,
    body: `<header>
<h1>${title}</h1>
<dl><div><dt>In the book</dt><dd>${book.commissions.length}</dd></div><div><dt>Closed</dt><dd>${book.commissions.filter(({ worked }) => worked).length}</dd></div></dl>
</header>
<main>
${problems(book.problems)}
<h2 id="commissions">Commissions</h2>
${table}
${book.empty.length > 0 ? `<p class="small">Nothing recorded yet: ${escapeHtml(book.empty.join(', '))}.</p>` : ''}
<p class="small">The last entry's number and fingerprint, on paper too, show whether a record was cut short or written anew since: tamper-evident, not proof.</p>
<h2>To learn from</h2>
<p>These are sheets: <code>npm run lab</code> opens them, in the folder <code>worksheets</code>.</p>
<ul>
${learning.map(learningItem).join('\n')}
</ul>
</main>`,
  });
}

function learningItem({ title, question, path }: LearningSheet): string {
  const address = path.split('/').map(encodeURIComponent).join('/');
  return `<li><a href="${escapeHtml(address)}">${escapeHtml(title)}</a>${question && `: ${escapeHtml(question)}`}</li>`;
}

function row(card: CommissionCard, hasPage: boolean): string {
  const { name, date, piece, client, species, joint, quoted, worked, head } = card;
  const title = escapeHtml(piece ?? name);
  const hours = [quoted && `${quoted.hours.toFixed(1)} estimated`, worked && `${worked.actual.toFixed(1)} taken`];
  const cells = [
    date,
    client ?? '',
    [species, joint].filter(Boolean).join(', '),
    quoted ? formatMoney(quoted.price) : '',
    hours.filter(Boolean).join(', '),
    state(card),
  ].map((text) => `<td>${escapeHtml(text)}</td>`);
  const link = hasPage ? `<a href="${escapeHtml(encodeURIComponent(name))}/index.html">${title}</a>` : title;
  cells.splice(1, 0, `<td>${link}</td>`);
  return `<tr>${cells.join('')}<td>${head.seq}, <code>${escapeHtml(shortHash(head.hash))}</code></td></tr>`;
}

function state({ answer, worked, quoted, lids }: CommissionCard): string {
  const measured = lids.length === 1 ? ', lid measured once' : `, lid measured ${lids.length} times`;
  if (worked) return `closed ${worked.finished}${lids.length > 0 ? measured : ''}`;
  return answer ?? (quoted ? 'quoted' : 'in work');
}

function problems(list: ShopBook['problems']): string {
  if (list.length === 0) return '';
  const items = list.map(({ name, problem }) => `<li>${escapeHtml(`${name}: ${problem}`)}</li>`).join('');
  return `<div class="problems"><p><strong>■ Not counted:</strong></p><ul>${items}</ul></div>`;
}
