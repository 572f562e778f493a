import type { Entry, Head } from '../../record/chain/entry.js';
import { decisionRows, referenceOf } from '../../record/decision-row.js';
import type { Draft } from '../../record/drafts/draft.js';
import { escapeHtml, wordsHtml } from '../kit/escape.js';
import { scrollable } from './scrollable-table.js';

/** A commission's record, for its page. */
export interface PageRecord {
  entries: readonly Entry[];
  /** Number and hash of the last entry. */
  head?: Head;
  /** What is worked out and not decided. */
  drafts?: readonly Draft[];
  /** What is wrong with it, in sentences; none when it is whole. */
  problems: readonly string[];
}

/** The record as a table: who decided what on which day, what it rests on, what was overridden and why, and its reference. */
export function recordSection({ entries, head, problems }: PageRecord): string {
  const rows = decisionRows(entries).map((row, i) => {
    const entry = entries[i] as Entry;
    const cells = [row.date, row.who, row.what, `${row.changed}${restsOn(entry)}`];
    return (
      `<tr><td class="number">${row.seq}</td>${cells.map((cell) => `<td>${wordsHtml(cell)}</td>`).join('')}` +
      `<td>${findingsHtml(entry)}</td><td><code>${escapeHtml(referenceOf(entry))}</code></td></tr>`
    );
  });
  const heads = ['No.', 'Day', 'Who', 'Decided', 'What changed', 'Findings', 'Reference'];
  const table =
    entries.length === 0
      ? '<p>Nothing has been recorded yet.</p>'
      : `<div class="output" ${scrollable('Wide table')}><table class="record"><thead><tr>${heads.map((text) => `<th scope="col">${text}</th>`).join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`;
  const seal = head
    ? `<p>Last entry: reference <code class="whole">${head.seq}:${escapeHtml(head.hash)}</code>. Kept elsewhere too, on the receipt or in the shop book, it shows whether this record was cut short or written anew.</p>`
    : '';
  return `<section class="sheet" id="record" aria-labelledby="record-title"><h2 id="record-title">Record of decisions</h2>${problemsHtml(problems)}${table}${seal}${versionsHtml(entries.at(-1))}</section>`;
}

/** What is wrong with the record, where nobody misses it. */
export function problemsHtml(problems: readonly string[]): string {
  if (problems.length === 0) return '';
  const items = problems.map((problem) => `<li>${escapeHtml(problem)}</li>`).join('');
  return `<div class="problems"><p><strong>■ The record is not whole:</strong></p><ul>${items}</ul></div>`;
}

function restsOn({ needs }: Entry): string {
  const names = Object.entries(needs).map(([what, { seq }]) => `${what} (${seq})`);
  return names.length > 0 ? `; rests on ${names.join(', ')}` : '';
}

function findingsHtml({ findings, overrides }: Entry): string {
  const count = (verdict: string) => findings.filter((finding) => finding.verdict === verdict).length;
  const counts = [
    count('stop') ? `■ ${count('stop')} to stop for` : '',
    count('watch') ? `▲ ${count('watch')} to watch` : '',
    count('ok') ? `○ ${count('ok')} in order` : '',
  ].filter(Boolean);
  const reasons = Object.entries(overrides).map(([rule, reason]) => `overridden: ${rule}, because ${reason}`);
  return [...counts.map((text) => escapeHtml(text).replaceAll(' ', '\u00a0')), ...reasons.map(wordsHtml)].join('<br>');
}

function versionsHtml(entry: Entry | undefined): string {
  if (!entry) return '';
  const { node, tslab, helpers, build, data } = entry.versions;
  const parts = [
    `Node ${node}`,
    tslab ? `tslab ${tslab}` : '',
    `kernel-helpers ${helpers} (build ${build.slice(0, 12)})`,
  ];
  const files = Object.entries(data).map(([name, hash]) => `${name} ${hash.slice(0, 12)}`);
  return `<p class="small">Last worked out with ${escapeHtml([...parts.filter(Boolean), ...files].join(', '))}.</p>`;
}
