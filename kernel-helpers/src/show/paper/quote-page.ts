import { formatLength } from '../../measure/length.js';
import { formatMoney, type Money } from '../../money/money.js';
import type { Quote } from '../../money/quote.js';
import type { Brief } from '../../piece/brief.js';
import type { PieceKind, SizedPiece } from '../../piece/piece.js';
import { referenceHere } from '../../record/papers.js';
import { woodName } from '../../wood/species.js';
import { capital } from '../kit/capital.js';
import { longDay } from '../kit/day-text.js';
import { escapeHtml, wordsHtml } from '../kit/escape.js';
import { paper } from './paper.js';

/** What a client is told. Nothing else of the commission goes in. */
export interface ClientQuote {
  /** Who offers, and how to be reached: one line each. */
  maker: string[];
  /** ISO day the quote is written. */
  date: string;
  brief: Brief;
  piece: Pick<SizedPiece, 'kind' | 'overall' | 'summary' | 'moving' | 'parts'>;
  /** Such as "shellac, 2 coats". */
  finish: string;
  /** By how much the part that moves most changes over a year, in; left out where it is not known. */
  moves?: number;
  /** What comes with the piece, a line each; empty for nothing more. */
  included: string[];
  quote: Pick<Quote, 'price' | 'net' | 'tax' | 'deposit' | 'balance' | 'validUntil'>;
  /** ISO day of hand-over. */
  ready: string;
  /** Other ways to have it made, each with its whole price. */
  others?: { name: string; price: Money }[];
}

const kinds: Record<PieceKind, string> = {
  box: 'a box with a sliding lid',
  drawer: 'a drawer',
  'solid-top': 'a top of solid wood',
  'frame-and-panel': 'a frame with a panel of solid wood',
  bookcase: 'a bookcase',
};

/** Common practice, no source. */
const care = [
  'Keep it away from radiators, stoves and direct sun, out of damp rooms, and off wet surfaces.',
  'Dust it with a soft dry cloth; wipe off water at once. No household cleaners.',
];

/**
 * The quote for the client, as one page to print: what is made, of which wood, with which joint, how big, how it is made
 * personal, how to care for it and how it moves, price, deposit, day, how long it holds.
 *
 * Only what {@link ClientQuote} names can stand on it: no hours, costs or margins are handed in.
 *
 * @returns a whole HTML document that loads nothing
 * @throws ShopError  a day that does not exist
 */
export function quotePage(content: ClientQuote): string {
  const { maker, date, brief, piece, finish, included, quote, ready, others = [] } = content;
  const { insideLength, insideWidth, insideDepth } = brief;
  const { price, net, tax, deposit, balance, validUntil } = quote;
  const length = (inches: number) => formatLength(inches, { system: brief.units, denominator: 64 });
  const size = (...sides: number[]) => sides.map(length).join(' x ');
  const wood = capital(woodName(brief.species));
  const plywood = piece.parts.filter(({ material }) => material === 'plywood').map(({ name }) => name);
  const what: [string, string][] = [
    ['Piece', `${brief.piece}: ${kinds[piece.kind]}`],
    ...(insideLength && insideWidth && insideDepth
      ? ([['Inside', `${size(insideLength, insideWidth, insideDepth)} (length, width, clear depth)`]] as [
          string,
          string,
        ][])
      : []),
    ['Outside', `about ${size(piece.overall.length, piece.overall.width, piece.overall.height)}`],
    [
      'Wood',
      `${wood}, solid${plywood.length > 0 ? ` (${plywood.join(' and ')} of plywood)` : ''}. Each board has its own colour, figure and small marks; no two pieces are alike, and the colour changes with light and years.`,
    ],
    ...(brief.joint ? ([['Corners', brief.joint]] as [string, string][]) : []),
    ['Made personal', brief.personal],
    ['Finish', finish],
    ...(included.length > 0 ? ([['Included', included.join('; ')]] as [string, string][]) : []),
  ];
  const amounts: [string, Money][] = [
    ...(tax.rate > 0
      ? ([
          ['Price before tax', net],
          [`${tax.name}, ${percent(tax.rate)}`, tax.amount],
        ] as [string, Money][])
      : []),
    ['Price', price],
    ['Deposit, due with your order', deposit],
    ['Balance, due when it is ready', balance],
  ];
  const body = [
    `<header><p class="quiet">${maker.map(escapeHtml).join('<br>')}</p></header>`,
    `<h1>Quote</h1><p>For ${escapeHtml(brief.client)}, ${longDay(date)}</p>`,
    `<h2>What you get</h2><table>${what.map(([name, text]) => row(name, wordsHtml(text))).join('')}</table>`,
    `<h2>Price</h2><table>${amounts.map(([name, money]) => row(name, escapeHtml(formatMoney(money)), 'number')).join('')}</table>`,
    `<h2>When</h2><p>Ready on <strong>${longDay(ready)}</strong>, if your order and the deposit come in time. This quote is valid until <strong>${longDay(validUntil)}</strong>.</p>`,
    others.length > 0
      ? `<h2>It could also be made like this</h2><table>${others.map(({ name, price }) => row(name, escapeHtml(formatMoney(price)), 'number')).join('')}</table>`
      : '',
    `<h2>Living with it</h2><p>${wordsHtml(movement(piece.moving.part, content.moves, length))}</p><ul>${care.map((line) => `<li>${wordsHtml(line)}</li>`).join('')}</ul>`,
    `<h2>Your order</h2><p>I order the piece as described above.</p><p class="sign"><span>Day</span><span>Name</span></p>`,
    `<p class="quiet">Reference in our record: <span class="reference">${referenceHere}</span>. It shows later that nothing was changed since.</p>`,
  ];
  return paper(`Quote: ${brief.piece}`, body.join('\n'), style);
}

const style = `header { border-bottom: 3px double #1f1b16; margin-bottom: 1.6rem; }
th { width: 12rem; color: #5d554b; }
th.number, td.number { width: auto; }
tr:has(.number) th { width: auto; color: inherit; }
.sign { display: flex; gap: 2rem; margin-top: 2.6em; break-inside: avoid; }
.sign span { flex: 2; border-top: 1px solid #1f1b16; color: #5d554b; padding-top: 0.2em; }
.sign span:first-child { flex: 1; }
@media print { @page { margin: 14mm 18mm; } body { font-size: 9.6pt; line-height: 1.32; } h1 { font-size: 20pt; } h2 { font-size: 11.5pt; margin-top: 1em; } header { margin-bottom: 1rem; } .sign { margin-top: 2em; } }
`;

function row(name: string, html: string, kind = ''): string {
  return `<tr><th scope="row">${wordsHtml(name)}</th><td${kind && ` class="${kind}"`}>${html}</td></tr>`;
}

const percent = (rate: number) => `${Number((100 * rate).toFixed(3))} %`;

function movement(part: string, moves: number | undefined, length: (inches: number) => string): string {
  const change = moves === undefined ? '' : `, by about ${length(moves)} between its driest and its dampest month`;
  return `Solid wood goes on moving: it swells in damp air and shrinks in dry. The ${part} is fitted for that: it changes in width through the year${change}, and is a little tighter in summer and looser in winter. That is no fault.`;
}
