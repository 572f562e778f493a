import type { Choices } from '../../surface/cautions.js';
import type { BenchStepId } from '../../time/bench-steps.js';
import type { Schedule, ScheduledStep } from '../../time/scheduled-steps.js';
import { longDay, shortDay } from '../kit/day-text.js';
import { escapeHtml, wordsHtml } from '../kit/escape.js';
import { cautions } from '../tables/cautions.js';
import { paper } from './paper.js';

/** What is set at the bench, a line each, by the step's id. */
export type BenchSettings = { [step in BenchStepId]?: string[] };

/**
 * The bench list: every step in working order with its day, its hours, what is counted, what is set, and the usual cautions
 * beside it, to print and hang on the wall.
 *
 * @param content.title  such as the piece and the client
 * @param content.made  as `schedule` gives it
 * @param content.choices  wood, finish, glue: only the cautions that hold for them are printed
 * @param content.settings  lines by step; see {@link benchSettings}
 * @param content.reasons  rules of thumb that are gone against, and why
 * @returns a whole HTML document that loads nothing
 * @throws ShopError  a caution that data/cautions.json does not have
 */
export function benchListPage(content: {
  title: string;
  made: Schedule;
  settings?: BenchSettings;
  reasons?: readonly { rule: string; reason: string }[];
  choices?: Choices;
}): string {
  const { title, made, reasons = [], choices } = content;
  const settings: Record<string, string[] | undefined> = content.settings ?? {};
  const { steps, promised, latestStart, finish } = made;
  const body = [
    `<h1>${escapeHtml(title)}</h1>`,
    `<p>Promised for <strong>${longDay(promised)}</strong>. Planned: begin ${longDay(made.start)}, done ${longDay(finish)}.${latestStart ? ` Last day to begin: ${longDay(latestStart)}.` : ''} Bold steps decide the day.</p>`,
    reasons.length > 0
      ? `<p class="against">Against a rule of thumb:</p><ul class="against">${reasons.map(({ rule, reason }) => `<li>${wordsHtml(rule)}: ${wordsHtml(reason)}</li>`).join('')}</ul>`
      : '',
    `<ol>${steps.map((step) => item(step, settings[step.id] ?? [], choices)).join('')}</ol>`,
  ];
  return paper(`Bench list: ${title}`, body.join('\n'), style);
}

const style = `ol { list-style: none; padding: 0; margin: 0; counter-reset: step; }
ol > li { counter-increment: step; border-top: 1px solid #1f1b16; padding: 0.5em 0 0.3em; break-inside: auto; }
.step { display: grid; grid-template-columns: 2.4rem 1fr auto; gap: 0 0.7rem; align-items: baseline; margin: 0 0 0.2em; break-after: avoid; }
.step::before { content: counter(step); font-variant-numeric: lining-nums; text-align: right; border: 1px solid #1f1b16; padding: 0 0.35em; }
.decides { font-weight: 700; }
.against { font-weight: 700; margin: 0 0 0.3em; }
.set { margin: 0 0 0.3em 3.1rem; padding-left: 1em; break-inside: avoid; break-after: avoid; }
.wait { margin: 0 0 0.3em 3.1rem; font-style: italic; break-before: avoid; }
.daybook-caution { margin: 0.2em 0 0.5em 3.1rem; border-left: 5px double #1f1b16; padding-left: 0.7em; font-size: 0.8rem; line-height: 1.3; }
.daybook-caution p { margin: 0 0 0.15em; }
.daybook-caution ul { margin: 0 0 0.25em; padding: 0; columns: 2; column-gap: 1.2em; }
.daybook-caution li { margin-left: 1.3em; }
@media print { body { font-size: 10pt; } .daybook-caution { font-size: 8pt; break-inside: avoid; } }
`;

function item(step: ScheduledStep, settings: string[], choices?: Choices): string {
  const { name, count, hours, start, finish, wait, critical } = step;
  const days = start === finish ? shortDay(start) : `${shortDay(start)} to ${shortDay(finish)}`;
  const counted = count ? ` <span class="quiet">${escapeHtml(count)}</span>` : '';
  const heading = `<span${critical ? ' class="decides"' : ''}>${escapeHtml(name)}</span>${counted}`;
  return [
    `<li><div class="step"><span>${heading}</span><span>${days}, ${hours.toFixed(1)} h</span></div>`,
    settings.length > 0 ? `<ul class="set">${settings.map((line) => `<li>${wordsHtml(line)}</li>`).join('')}</ul>` : '',
    step.cautions.length > 0 ? cautions(step.cautions, choices).text : '',
    wait ? `<p class="wait">Then wait: ${wordsHtml(wait.what)}, until ${shortDay(wait.until)}.</p>` : '',
    '</li>',
  ].join('');
}
