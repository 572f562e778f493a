import { type Finding, nothingGoesPast, type Verdict } from '../../measure/finding.js';
import { capital } from '../kit/capital.js';
import type { DisplayItem } from '../kit/display.js';
import { escapeHtml, wordsHtml } from '../kit/escape.js';

// Told apart by word, shape and weight of the rule at the left, so that grey print and colour-blind eyes lose nothing.
const looks: Record<Verdict, { word: string; shape: string; rule: number }> = {
  stop: { word: 'Stop', shape: '■', rule: 8 },
  watch: { word: 'Watch', shape: '▲', rule: 4 },
  ok: { word: 'In order', shape: '○', rule: 1 },
};

/** Worst first. */
const order: Verdict[] = ['stop', 'watch', 'ok'];

/**
 * What the design rules say, the worst first: verdict in a word and a shape, figures, reason and what to change.
 *
 * @param findings  as the rules returned them
 * @param overrides  reason by rule, where the maker decided against a `stop`
 */
export function findingList(
  findings: readonly Finding[],
  overrides: Readonly<Record<string, string>> = {},
): DisplayItem {
  const sorted = order.flatMap((verdict) => findings.filter((finding) => finding.verdict === verdict));
  const count = (verdict: Verdict) => findings.filter((finding) => finding.verdict === verdict).length;
  const summary =
    findings.length === 0
      ? 'No rule was checked.'
      : `${count('stop')} to stop for, ${count('watch')} to watch, ${count('ok')} in order.`;
  const items = sorted.map((finding) => item(finding, overrides[finding.rule]));
  const text =
    `<div class="daybook-findings"><p>${summary}</p>` +
    `<ul style="list-style-type: none; padding-left: 0">${items.join('')}</ul></div>`;
  return { mime: 'text/html', text };
}

function item(finding: Finding, override: string | undefined): string {
  const { word, shape, rule } = looks[finding.verdict];
  const change = finding.verdict === 'ok' || !finding.change ? '' : ` <em>To change:</em> ${sentence(finding.change)}`;
  const overridden =
    override === undefined || finding.absolute
      ? ''
      : ` <em>Built all the same, because:</em> <strong>${sentence(override)}</strong>`;
  const absolute =
    finding.verdict === 'stop' && finding.absolute ? ` <em>${nothingGoesPast[finding.absolute]}</em>` : '';
  return (
    `<li class="daybook-${finding.verdict}" style="border-left: ${rule}px solid #555; padding-left: ${16 - rule}px; margin: 6px 0">` +
    `<strong>${shape} ${word}: ${escapeHtml(finding.rule)}.</strong> ` +
    `${sentence(finding.figures)} ${sentence(finding.reason)}${change}${absolute}${overridden}</li>`
  );
}

function sentence(text: string): string {
  const trimmed = text.trim();
  // The name of a parameter stays as it is typed in the sheet.
  const isName = /^[a-z]+[A-Z]/.test(trimmed);
  const begun = isName ? trimmed : capital(trimmed);
  return wordsHtml(/[.!?]$/.test(begun) ? begun : `${begun}.`);
}
