import type { StockDecision } from '../../record/decisions/decisions.js';
import { type Blank, blankWords } from '../../stock/milling/blanks.js';

type Length = (inches: number) => string;

/** What the lines on milling are written from. */
export type Milled = Pick<StockDecision, 'snipe' | 'planer' | 'jointer'> & {
  toCut: { blanks: Blank[] };
  milled: Pick<StockDecision['milled'][number], 'blank' | 'resawn'>[];
};

/** What is cut rough, and what is sawn from a board's thickness while it still has time to settle. @internal */
export function roughCutLines({ toCut, milled }: Milled, length: Length): string[] {
  const sawn = milled.flatMap(({ blank, resawn }) =>
    resawn
      ? [
          `${blankWords(blank)}: flatten one face, resaw at the band saw to ${length(resawn.thickness)} with that face against the fence, sticker it, and plane once it has settled`,
        ]
      : [],
  );
  return [
    ...toCut.blanks.map(
      (blank) => `${blankWords(blank)}: ${length(blank.length)} x ${length(blank.width)}; cuts as numbered in sheet 07`,
    ),
    'rip at the band saw: a rough board has no flat face yet for the table saw',
    ...sawn,
  ];
}

/** Flat, to thickness, one edge square: everything on blanks that are still whole. @internal */
export function flatteningLines({ toCut: { blanks }, snipe, planer, jointer }: Milled, length: Length): string[] {
  // A record from before its machines were kept says nothing of them.
  const { widest = Infinity } = jointer ?? {};
  const { leastThickness = 0 } = planer ?? {};
  const wide = blanks.filter(({ width }) => width > widest);
  return [
    'flatten one face',
    ...(wide.length > 0
      ? [
          `${wide.map(blankWords).join(', ')}: wider than the ${length(widest)} of the jointer; flatten its face by hand plane, or wedged on a sled through the planer`,
        ]
      : []),
    ...snipe.slice(-1).map(({ how }) => how),
    ...blanks.map(
      (blank) =>
        `${blankWords(blank)}: ${length(blank.thickness)} thick, planed whole${blank.thickness < leastThickness ? ', on a carrier board' : ''}`,
    ),
    'joint one edge square to a face',
  ];
}

/** Blanks are ripped whole and parted afterwards: a short part never meets the rip fence by itself. @internal */
export function partingLines({ toCut: { blanks } }: Milled): string[] {
  const rows = blanks.filter(({ parts }) => parts.length > 1);
  return [
    'rip to width before anything is cut to length',
    ...(rows.length > 0
      ? [
          `chalk the names again; rip ${rows.map(({ name }) => name).join(', ')} whole, then crosscut the parts apart by the numbered cuts`,
        ]
      : []),
  ];
}
