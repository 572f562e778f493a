import { monthNames } from '../../wood/air/months.js';
import { woodName } from '../../wood/species.js';
import type { Decisions } from '../decisions/decisions.js';
import { caliperText, type Shown, sizesText } from './shown.js';
import { counted, type KeyFigure, type KeyFigures } from './told.js';

/** What was asked for. @internal */
export function briefFigures(brief: Decisions['brief'], shown: Shown): KeyFigures {
  const { insideLength, insideWidth, insideDepth, joint, promised } = brief;
  const inside =
    insideLength && insideWidth && insideDepth && sizesText([insideLength, insideWidth, insideDepth], shown);
  const wood = woodName(brief.species);
  const said = [inside ? `${inside} inside` : brief.piece, wood, joint].filter(Boolean);
  return {
    sentence: `${said.join(', ')}, promised ${promised}`,
    figures: [
      ...(inside ? [{ name: 'Inside', value: inside }] : []),
      { name: 'Wood', value: wood },
      ...(joint ? [{ name: 'Joint', value: joint }] : []),
      { name: 'Promised', value: promised },
    ],
  };
}

/** How large the piece is, and what it is remembered by; the part that was fitted here as the caliper reads it. @internal */
export function sizingFigures(piece: Decisions['sizing'], shown: Shown): KeyFigures {
  const { length, width, height } = piece.overall;
  const overall = sizesText([length, width, height], shown);
  const fitted = piece.fit?.fittedWidth;
  const summary = piece.summary.map(({ what, sizes }): KeyFigure => {
    const [only] = sizes;
    if (sizes.length !== 1 || only === undefined) return { name: what, value: sizesText(sizes, shown) };
    return { name: what, value: only === fitted ? caliperText(only, shown) : sizesText(sizes, shown), number: only };
  });
  const fit = summary.find(({ number }) => number !== undefined && number === fitted);
  const parts = piece.parts.reduce((sum, { count }) => sum + count, 0);
  return {
    sentence: `${overall} overall${fit ? `, ${fit.name[0]?.toLowerCase()}${fit.name.slice(1)} ${fit.value}` : ''}`,
    figures: [{ name: 'Overall', value: overall }, ...summary, { name: 'Parts', value: String(parts), number: parts }],
  };
}

/** How far the wood's moisture goes through the year, and how long its stack waits. @internal */
export function airFigures({ moistures, stack }: Decisions['air']): KeyFigures {
  const byMoisture = [...moistures].sort((a, b) => a.moisture - b.moisture);
  const month = (each: Decisions['air']['moistures'][number] | undefined) => ({
    value: `${each?.moisture.toFixed(1)} %, ${monthNames[(each?.month ?? 1) - 1]}`,
    number: each?.moisture,
  });
  const [driest, wettest] = [byMoisture[0], byMoisture.at(-1)];
  const waits = stack && counted(stack.days, 'day');
  return {
    sentence: `wood from ${driest?.moisture.toFixed(1)} to ${wettest?.moisture.toFixed(1)} % through the year${waits ? `; the stack waits ${waits}` : ''}`,
    figures: [
      { name: 'Driest', ...month(driest) },
      { name: 'Wettest', ...month(wettest) },
      ...(stack
        ? [
            { name: 'Stack waits', value: waits ?? '', number: stack.days },
            { name: 'Stack settles at', value: `${stack.settlesAt.toFixed(1)} %`, number: stack.settlesAt },
          ]
        : []),
    ],
  };
}

/** How wide the lid is planed. @internal */
export function lidFigures(lid: Decisions['lid'], shown: Shown): KeyFigures {
  const { fittedWidth, fittedTongue, window, byMonth } = lid;
  const tightest = byMonth.reduce((least, month) => (month.clearance < least.clearance ? month : least));
  const width = (name: string, inches: number): KeyFigure => ({
    name,
    value: caliperText(inches, shown),
    number: inches,
  });
  return {
    sentence: `plane to ${caliperText(fittedWidth, shown)}`,
    figures: [
      width('Lid planed to', fittedWidth),
      width('Lid at least', window.narrowest),
      width('Lid at most', window.widest),
      width('Tongue planed to', fittedTongue),
      width(`Least play, ${monthNames[tightest.month - 1]}`, tightest.clearance),
    ],
  };
}

/** How the corners are set out. @internal */
export function jointFigures({ layout, firstBoards }: Decisions['joint'], shown: Shown): KeyFigures {
  const length = (name: string, inches: number): KeyFigure => ({
    name,
    value: sizesText([inches], shown),
    number: inches,
  });
  const gauge = length('Marking gauge', layout.gaugeSetting);
  if ('tails' in layout) {
    const tails = layout.tails.length;
    const dividers = length('Dividers', layout.dividerSetting);
    return {
      sentence: `${counted(tails, 'tail')} a corner, dividers at ${dividers.value}, gauge at ${gauge.value}`,
      figures: [
        { name: 'Tails a corner', value: String(tails), number: tails },
        dividers,
        gauge,
        { name: 'Bevel', value: `1:${layout.slope}`, number: layout.slope },
        { name: 'Tails on', value: firstBoards },
      ],
    };
  }
  const finger = length('Finger', layout.fingerWidth);
  return {
    sentence: `${counted(layout.count, 'finger')} of ${finger.value}, gauge at ${gauge.value}`,
    figures: [
      { name: 'Fingers', value: String(layout.count), number: layout.count },
      finger,
      gauge,
      { name: 'Finger at the lower edge', value: firstBoards },
    ],
  };
}

/** Where grooves run out and where they stop. @internal */
export function grooveFigures({ runs, passes }: Decisions['grooves']): KeyFigures {
  const stopped = runs.filter(({ ends }) => ends.includes('stopped')).length;
  const inAll = passes.reduce((sum, { fences, depths }) => sum + fences.length * depths.length, 0);
  return {
    sentence: `${counted(runs.length, 'groove')}, ${stopped === 0 ? 'none' : stopped} of them stopped`,
    figures: [
      { name: 'Grooves', value: String(runs.length), number: runs.length },
      { name: 'Stopped grooves', value: String(stopped), number: stopped },
      { name: 'Passes for one of each kind', value: String(inAll), number: inAll },
    ],
  };
}
