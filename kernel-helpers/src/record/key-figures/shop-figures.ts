import { ofHundred } from '../../measure/of-hundred.js';
import { formatMoney, type Money, unitsOf } from '../../money/money.js';
import { boardFeet } from '../../stock/boards/board-feet.js';
import { finish } from '../../surface/finish/finishes.js';
import { glue } from '../../surface/finish/glues.js';
import type { Decisions } from '../decisions/decisions.js';
import { amountText, caliperText, type Shown } from './shown.js';
import { counted, type KeyFigure, type KeyFigures } from './told.js';

/** Which boards and sheets, and what those cost that are bought. @internal */
export function stockFigures(stock: Decisions['stock'], shown: Shown): KeyFigures {
  const { boards, sheets, bought } = stock;
  const all = [...boards, ...sheets];
  const toPay = all
    .filter(({ inHand }) => !inHand)
    .reduce((sum, board) => sum + Math.round(100 * boardFeet(board) * board.price), 0);
  const paid = amountText(toPay / 100, shown);
  return {
    sentence: `${counted(all.length, 'board')}, ${paid}`,
    figures: [
      { name: 'Boards', value: all.map(({ mark }) => mark).join(', ') },
      { name: 'Price of the boards', value: paid, number: toPay / 100 },
      { name: 'Board feet', value: bought.toFixed(2), number: bought },
      { name: 'In the piece', value: `${(100 * stock.yield).toFixed(0)} %`, number: stock.yield },
    ],
  };
}

/** What is cut in, how it is finished and glued. @internal */
export function surfaceFigures(surface: Decisions['surface'], shown: Shown): KeyFigures {
  const { text, letters, deepest, handle, sandingMinutes } = surface;
  const finished = `${finish(surface.finish.id).name.toLowerCase()}, ${counted(surface.finish.coats, 'coat')}`;
  const cut = letters > 0 ? `${text}, ${caliperText(deepest, shown)} deep; ` : '';
  return {
    sentence: `${cut}${finished}`,
    figures: [
      { name: 'Lettering', value: letters > 0 ? text : 'none' },
      { name: 'Deepest cut', value: caliperText(deepest, shown), number: deepest },
      { name: 'Handle', value: handle },
      { name: 'Glue', value: glue(surface.glue.id).type.toLowerCase() },
      { name: 'Finish', value: finished },
      { name: 'Sanding', value: hoursText(sandingMinutes / 60), number: sandingMinutes / 60 },
    ],
  };
}

/** What is asked for the piece, and what it takes. @internal */
export function quoteFigures({ hours, cost, quote }: Decisions['quote']): KeyFigures {
  const amount = (name: string, given: Money): KeyFigure => ({
    name,
    value: formatMoney(given),
    number: unitsOf(given),
  });
  return {
    sentence: formatMoney(quote.price),
    figures: [
      amount('Price', quote.price),
      { name: 'Hours', value: hoursText(hours.mean), number: hours.mean },
      amount('Cost', cost.total),
      { name: 'Quote valid until', value: quote.validUntil },
    ],
  };
}

/** When it is ready, and how sure the promised day is. @internal */
export function daysFigures({ finish, promised, odds, latestStart }: Decisions['days']): KeyFigures {
  return {
    sentence: `ready ${finish}, promised ${promised}`,
    figures: [
      { name: 'Ready', value: finish },
      { name: 'Promised', value: promised },
      { name: 'In time, times of a hundred', value: ofHundred(odds), number: odds },
      { name: 'Last day to begin', value: latestStart ?? 'past' },
    ],
  };
}

/** How the part that was fitted stood in later seasons. @internal */
export function measuredFigures({ measurements }: Decisions['measured'], shown: Shown): KeyFigures {
  const last = measurements.at(-1);
  const play = last ? caliperText(last.clearance, shown) : '';
  return {
    sentence: last ? `measured ${last.date}: play ${play}` : 'not measured yet',
    figures: [
      { name: 'Measurements', value: String(measurements.length), number: measurements.length },
      ...(last ? [{ name: 'Last play', value: `${play}, ${last.date}`, number: last.clearance }] : []),
    ],
  };
}

/** What the client said. @internal */
export function answerFigures({ answer, date }: Decisions['answer']): KeyFigures {
  return {
    sentence: `${answer} ${date}`,
    figures: [
      { name: 'Answer', value: answer },
      { name: 'Answered', value: date },
    ],
  };
}

/** What it really took. @internal */
export function actualsFigures({ finished, actual, estimated, yield: yielded }: Decisions['actuals']): KeyFigures {
  return {
    sentence: `finished ${finished}, ${hoursText(actual)} where ${hoursText(estimated)} were estimated`,
    figures: [
      { name: 'Finished', value: finished },
      { name: 'Hours taken', value: hoursText(actual), number: actual },
      { name: 'Hours estimated', value: hoursText(estimated), number: estimated },
      { name: 'In the piece', value: `${(100 * yielded).toFixed(0)} %`, number: yielded },
    ],
  };
}

const hoursText = (hours: number) => `${hours.toFixed(1)} h`;
