import type { SheetTop } from '../../record/on-board.js';
import type { FurtherOn, SheetNews } from '../../record/sheet-news.js';
import { capital } from '../kit/capital.js';
import type { DisplayItem } from '../kit/display.js';
import { wordsHtml } from '../kit/escape.js';

/** The top of a sheet: what its decision comes to, in one sentence, then what moved, before and now, here and further on. */
export function sheetTop({ news, refused }: SheetTop): DisplayItem {
  const parts = news.map(newsHtml);
  if (refused) parts.unshift(`<p><strong>■ ${wordsHtml(capital(refused))}</strong></p>`);
  if (parts.length === 0) parts.push('<p>Nothing is decided in this run yet.</p>');
  return {
    mime: 'text/html',
    text: `<div class="daybook-top" style="border-left: 4px solid #444; padding-left: 12px; margin: 8px 0">${parts.join('')}</div>`,
  };
}

function newsHtml({ what, sentence, outcome, entry, before, moved, further }: SheetNews): string {
  const states: Record<SheetNews['outcome'], string> = {
    recorded: `Decided, entry ${entry?.seq}.`,
    same: `As decided on ${entry?.at.slice(0, 10)}, entry ${entry?.seq}.`,
    draft: 'A draft: not decided.',
    practice: 'Practice: nothing is kept.',
  };
  const answer = `<p><strong>${wordsHtml(capital(sentence || what))}.</strong> ${states[outcome]}</p>`;
  const rows = [
    ...moved.map(({ name, before, now }) => row(name, before, now)),
    ...further.flatMap((later) => furtherRows(later)),
  ];
  if (rows.length === 0) return answer;
  const head = ['What moved', beforeText(before), 'Now'];
  return `${answer}<table class="daybook-table"><thead><tr>${head.map((text) => `<th scope="col" style="text-align: left">${wordsHtml(text)}</th>`).join('')}</tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function beforeText(before: SheetNews['before']): string {
  if (!before) return 'Before';
  return before.draft ? 'The draft before' : `As decided on ${before.at.slice(0, 10)}`;
}

function furtherRows({ what, sentence, notRunSince, moved }: FurtherOn): string[] {
  const name = capital(what);
  if (notRunSince) return [row(name, sentence, 'not run since')];
  return moved.map((figure) => row(`${name}: ${figure.name}`, figure.before, figure.now));
}

function row(name: string, before = 'none', now = 'none'): string {
  const cells = [before, now].map((text) => `<td style="text-align: left">${wordsHtml(text)}</td>`);
  return `<tr><th scope="row" style="text-align: left; font-weight: normal">${wordsHtml(name)}</th>${cells.join('')}</tr>`;
}
