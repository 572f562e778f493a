import type { FitOdds } from '../../fit/fit-odds.js';
import { caliperScale } from '../../measure/length.js';
import type { DisplayItem } from '../kit/display.js';
import { plot } from './plot.js';

/**
 * Odds that a lid binds or loses its hold, over the width it is planed to.
 *
 * @param odds  for each width in in, rising: as `fitOdds` gives them
 * @param aim  width aimed at, in
 * @param units  millimetres for `mm`, else inches
 */
export function oddsPlot(
  odds: { width: number; odds: FitOdds }[],
  aim: number,
  units: 'tape' | 'mm' | 'both' = 'tape',
): DisplayItem {
  const { unit, decimals, perInch } = caliperScale(units);
  const line = (share: (of: FitOdds) => number) =>
    odds.map((each) => ({ width: each.width * perInch, share: 100 * share(each.odds) }));
  const look = { x: 'width', y: 'share', stroke: '#1a1a1a', strokeWidth: 2 };
  const reading = (inches: number) => `${(inches * perInch).toFixed(decimals)} ${unit}`;
  const nearest = odds.reduce((a, b) => (Math.abs(b.width - aim) < Math.abs(a.width - aim) ? b : a));
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
  const ends = [
    {
      width: (odds[0]?.width ?? 0) * perInch,
      share: 100,
      words: 'loses its hold in the driest month',
      anchor: 'start',
    },
    { width: (odds.at(-1)?.width ?? 0) * perInch, share: 100, words: 'binds in the wettest month', anchor: 'end' },
  ];
  return plot(
    (Plot) => ({
      height: 260,
      x: { label: `width planed to, ${unit}`, tickFormat: (width: number) => width.toFixed(decimals - 1) },
      y: { label: 'of a hundred lids', domain: [0, 108], ticks: [0, 25, 50, 75, 100], grid: true },
      marks: [
        Plot.ruleX([aim * perInch], { stroke: '#1a1a1a', strokeDasharray: '5 4' }),
        Plot.line(
          line(({ binds }) => binds),
          look,
        ),
        Plot.line(
          line(({ rattles }) => rattles),
          { ...look, strokeDasharray: '2 3' },
        ),
        ...ends.map((end) =>
          Plot.text([end], {
            x: 'width',
            y: 'share',
            text: 'words',
            textAnchor: end.anchor,
            dy: -10,
            dx: end.anchor === 'start' ? 4 : -4,
          }),
        ),
        Plot.text([{ width: aim * perInch, share: 55 }], {
          x: 'width',
          y: 'share',
          text: () => `aim ${reading(aim)}`,
          dx: 6,
          textAnchor: 'start',
          stroke: 'white',
          strokeWidth: 5,
          fill: '#1a1a1a',
        }),
      ],
    }),
    {
      alt: `Odds over the width planed to. At ${reading(nearest.width)}, near the aim, ${percent(nearest.odds.binds)} bind and ${percent(nearest.odds.rattles)} lose their hold.`,
      caption: `Of a hundred lids planed to a width, how many would bind (full line) and how many would lose their hold (dots), some time in the year. The broken line is the width you aim at, ${reading(aim)}.`,
    },
  );
}
