import type { Finding } from '../../measure/finding.js';
import { judge, rounding, tape } from '../../measure/verdict.js';
import type { Board } from '../boards/boards.js';
import { machineFindings } from './machine-findings.js';
import type { Judged, MilledBlank } from './milled-blank.js';
import { panelFindings } from './panels.js';

/** How far from the moisture of its later home wood may be when it is milled, points of moisture: common practice, no source. */
const nearEnough = 2;
const farOff = 5;

/** What must be true of boards, parts and machine. @internal */
export function millingFindings(judged: Judged): Finding[] {
  return [
    fitsABoard(judged),
    ...(judged.plan ? [] : [enoughBoard(judged)]),
    thickEnough(judged),
    ...dryEnough(judged),
    snipeInTheWaste(judged),
    ...machineFindings(judged),
    ...panelFindings(judged.cut.panels, judged.cut.planer),
  ];
}

function fitsABoard({ cut: { toCut }, boards }: Judged): Finding {
  const homeless = toCut.blanks.find(
    ({ length, width, thickness }) =>
      !boards.some((board) => length <= board.length && width <= board.width && thickness < board.thickness),
  );
  const most = (pick: (board: Board) => number) => tape(Math.max(...boards.map(pick)));
  return {
    rule: 'every part fits a board',
    verdict: judge(!homeless, 'stop'),
    absolute: 'impossible',
    figures: homeless
      ? `${homeless.name}${homeless.parts.length > 1 ? ` (${homeless.parts.join(', ')})` : ''}: ${tape(homeless.length)} by ${tape(homeless.width)} rough, ${tape(homeless.thickness)} finished; the longest board has ${most((b) => b.length)}, the widest ${most((b) => b.width)}, the thickest ${most((b) => b.thickness)}`
      : 'each part is shorter, narrower and thinner than some board',
    reason: 'a part cannot be cut from a board that is smaller',
    change: 'a longer, wider or thicker board, a shorter sequence, or glue the part up from two',
  };
}

function enoughBoard({ cut: { toCut }, boards }: Judged): Finding {
  const area = (pieces: readonly { length: number; width: number }[]) =>
    pieces.reduce((total, { length, width }) => total + length * width, 0);
  const cover = area(boards) / area(toCut.blanks);
  return {
    rule: 'enough board for the parts',
    verdict: cover < 1 ? 'stop' : judge(cover >= 1.3, 'watch'),
    absolute: 'impossible',
    figures: `boards ${area(boards).toFixed(0)} square inches, rough parts ${area(toCut.blanks).toFixed(0)}: ${cover.toFixed(2)} times`,
    reason: 'kerfs, knots and matching the figure take about a third on top of the rough parts',
    change: 'another board, or a wider one',
  };
}

function thickEnough({ milled }: Judged): Finding {
  const spare = ({ reach, blank }: MilledBlank) => reach - blank.thickness;
  const scarcest = milled.reduce<MilledBlank | undefined>(
    (worst, each) => (worst === undefined || spare(each) < spare(worst) ? each : worst),
    undefined,
  );
  const figures = scarcest
    ? `scarcest: ${scarcest.blank.name} from board ${scarcest.board} reaches ${tape(Math.max(0, scarcest.reach))}, is to be ${tape(scarcest.blank.thickness)}`
    : 'no part fits a board';
  const enough = scarcest ? spare(scarcest) : 0;
  return {
    rule: 'thick enough once it is flat',
    verdict: enough < -rounding ? 'stop' : judge(enough >= 1 / 32 - rounding, 'watch'),
    absolute: 'impossible',
    figures,
    reason:
      'bow, cup and twist are planed away before anything else, and under 1/32 in to spare is gone with one torn patch',
    change: 'a thicker or straighter board, or cut shorter and narrower before flattening',
  };
}

function dryEnough({ boards, service, stackMoisture }: Judged): Finding[] {
  const readings = boards.flatMap(({ mark, moisture }) => {
    if (moisture !== undefined) return [{ moisture, what: `board ${mark} reads` }];
    return stackMoisture === undefined ? [] : [{ moisture: stackMoisture, what: `board ${mark}, as the stack, reads` }];
  });
  if (service === undefined || readings.length === 0) return [];
  const off = ({ moisture }: { moisture: number }) => moisture - service;
  const worst = readings.reduce((a, b) => (Math.abs(off(b)) > Math.abs(off(a)) ? b : a));
  const distance = Math.abs(off(worst));
  return [
    {
      rule: 'boards as dry as their later home',
      verdict: off(worst) > farOff ? 'stop' : judge(distance <= nearEnough + rounding, 'watch'),
      figures: `${worst.what} ${worst.moisture.toFixed(1)} %, the piece will live at ${service.toFixed(1)} %`,
      reason: 'wood milled wet shrinks, cups and opens its joints after it is flat and fitted',
      change: `sticker the boards where sheet 03 says until they read within ${nearEnough} points of that, then mill`,
    },
  ];
}

function snipeInTheWaste({ cut: { allowances, planer } }: Judged): Finding {
  const held = allowances.length >= 2 * planer.snipeLength - rounding || planer.snipeDepth < rounding;
  return {
    rule: 'snipe falls in the waste',
    verdict: judge(held, 'watch'),
    figures: `${tape(allowances.length)} over length; the planer dips ${tape(planer.snipeLength)} at each end`,
    reason: 'a dip at the end of a part shows in the joint',
    change: `over length of ${tape(2 * planer.snipeLength)}, or better a lead and a tail piece before and after`,
  };
}
