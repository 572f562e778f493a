import { formatMoney } from '../../money/money.js';
import type { CommissionCard } from '../../record/commission-card.js';
import { shortHash } from '../../record/decision-row.js';
import type { ShopBook } from '../../record/shop-book.js';
import { escapeHtml } from '../escape.js';
import { contentPolicy } from './commission-page.js';
import { pageStyle } from './page-style.js';

/**
 * All commissions on one page that needs nothing but a browser: what was made for whom, of what, for how much, what it took, and
 * where each record ends. Printed and put away, it is the shop's book of last entries outside of the computer.
 *
 * @param book  as `shopBook` gives it
 * @param pages  names of the commissions that have a page of their own
 * @returns HTML
 */
export function contentsPage(
  book: Pick<ShopBook, 'commissions' | 'problems' | 'empty'>,
  pages: ReadonlySet<string>,
): string {
  const rows = [...book.commissions].reverse().map((card) => row(card, pages.has(card.name)));
  const heads = ['Begun', 'Piece', 'For', 'Wood and joint', 'Price', 'Hours', 'State', 'Last entry'];
  const table =
    rows.length === 0
      ? '<p>No commission is recorded yet.</p>'
      : `<table><thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${rows.join('\n')}</tbody></table>`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentPolicy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>All commissions</title>
<style>${pageStyle('All commissions')}
body { max-width: 68rem; }
td { font-size: 0.875rem; }
</style>
</head>
<body>
<header>
<h1>All commissions</h1>
<dl><div><dt>In the book</dt><dd>${book.commissions.length}</dd></div><div><dt>Closed</dt><dd>${book.commissions.filter(({ worked }) => worked).length}</dd></div></dl>
</header>
<main>
${problems(book.problems)}
${table}
${book.empty.length > 0 ? `<p class="small">Nothing recorded yet: ${escapeHtml(book.empty.join(', '))}.</p>` : ''}
<p class="small">The last entry's number and fingerprint, on paper too, show whether a record was cut short or written anew since: tamper-evident, not proof.</p>
</main>
</body>
</html>
`;
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
