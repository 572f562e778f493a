import type { Finding } from '../../measure/finding.js';
import { judge, rounding, tape } from '../../measure/verdict.js';
import { blankWords, partsIn, rippedWidth } from './blanks.js';
import type { Judged } from './milled-blank.js';
import { takesTooMuch } from './resawing.js';

/** What the machines must be able to take: nothing is fed to one that is shorter, narrower, thinner or wider. @internal */
export function machineFindings(judged: Judged): Finding[] {
  return [
    longEnough(judged),
    rippedWhole(judged),
    wideEnough(judged),
    narrowEnough(judged),
    narrowEnoughForTheJointer(judged),
    thickEnoughForThePlaner(judged),
    notHalfPlanedAway(judged),
  ];
}

function longEnough({ cut: { rough, toCut, planer, jointer, tableSaw } }: Judged): Finding {
  const least = Math.max(planer.leastLength, jointer.leastLength, tableSaw.leastLength);
  const short = rough.filter(({ length }) => length < least);
  const names = short.map(({ name, length }) => `${name} ${tape(length)}`).join(', ');
  const blanks = toCut.blanks
    .filter(({ parts }) => parts.some((part) => short.some(({ name }) => name === toCut.partOf[part])))
    .map((blank) => `${blankWords(blank)} ${tape(blank.length)} long`)
    .join(', ');
  const tooShort = toCut.blanks.find(({ length }) => length < least - rounding);
  return {
    rule: 'pieces long enough for the machines',
    verdict: judge(!tooShort, 'stop'),
    absolute: 'unsafe',
    figures:
      short.length === 0
        ? `every rough part is at least ${tape(least)} long`
        : `${names}: shorter than the ${tape(least)} that jointer, planer and table saw take; planed and ripped as ${blanks}`,
    reason: "a piece shorter than the machine's stated least length tips, or is thrown: it is never fed alone",
    change: 'plane and rip a longer blank, and cut it apart afterwards',
  };
}

function rippedWhole({ cut }: Judged): Finding {
  const { tableSaw, toCut } = cut;
  const small = toCut.blanks.flatMap((blank) => {
    const parts = partsIn(blank, cut);
    const narrower = parts.filter(({ finished }) => finished.width < rippedWidth(parts) - rounding);
    return narrower.filter(
      ({ finished: { length, width } }) =>
        length < tableSaw.leastLength - rounding || width < tableSaw.leastWidth - rounding,
    );
  });
  const alone = small.map(({ name }) => name);
  return {
    rule: 'short parts ripped in the blank',
    verdict: judge(alone.length === 0, 'stop'),
    absolute: 'unsafe',
    figures:
      alone.length === 0
        ? 'every part shorter than the table saw takes by hand is ripped while it is still in its blank'
        : `${alone.join(', ')}: narrower than the rest of the blank, and under the ${tape(tableSaw.leastLength)} that the table saw takes by hand`,
    reason: 'a short piece turns between fence and blade and is thrown',
    change:
      'leave it out of the row of figure, or bring it to width by hand plane: give it the width of the others here',
  };
}

function wideEnough({ cut: { rough, planer, tableSaw } }: Judged): Finding {
  const strips = rough.filter(({ strip }) => strip);
  const narrow = rough.some(({ width }) => width < planer.leastWidth - rounding);
  return {
    rule: 'pieces wide enough for the machines',
    verdict: judge(!narrow, 'stop'),
    absolute: 'unsafe',
    figures:
      strips.length === 0
        ? `every part is at least ${tape(tableSaw.leastWidth)} wide, as the table saw takes it by hand`
        : `${strips.map(({ name, finished }) => `${name} ${tape(finished.width)}`).join(', ')}: milled ${strips.map(({ width }) => tape(width)).join(', ')} wide, and ripped off as the strip that falls away from the fence`,
    reason: 'between blade and fence there is no room for hand and push stick at a narrow piece',
    change: 'mill a wider blank, and rip the strip off it last',
  };
}

function narrowEnough({ cut: { toCut, planer } }: Judged): Finding {
  const widest = toCut.blanks.reduce((a, b) => (b.width > a.width ? b : a));
  return {
    rule: 'narrow enough for the planer',
    verdict: judge(widest.width <= planer.widest + rounding, 'watch'),
    figures: `widest: ${widest.name}, ${tape(widest.width)}; the planer takes ${tape(planer.widest)}`,
    reason: 'a wider piece does not go through',
    change: 'plane it in two and glue it up, or flatten it with a hand plane',
  };
}

function narrowEnoughForTheJointer({ cut: { toCut, jointer } }: Judged): Finding {
  const wide = toCut.blanks.filter(({ width }) => width > jointer.widest + rounding);
  return {
    rule: 'narrow enough for the jointer',
    verdict: judge(wide.length === 0, 'watch'),
    figures:
      wide.length === 0
        ? `no face is wider than the ${tape(jointer.widest)} that the jointer takes`
        : `${wide.map((blank) => `${blankWords(blank)} ${tape(blank.width)}`).join(', ')}; the jointer takes ${tape(jointer.widest)}`,
    reason: 'a wider face would be cut in two, and the ridge between tips it',
    change: 'flatten its first face with a hand plane, or wedged on a sled through the planer',
  };
}

function thickEnoughForThePlaner({ cut: { toCut, planer } }: Judged): Finding {
  const thin = toCut.blanks.filter(({ thickness }) => thickness < planer.leastThickness - rounding);
  return {
    rule: 'thick enough for the planer',
    verdict: judge(thin.length === 0, 'watch'),
    figures:
      thin.length === 0
        ? `nothing is planed under the ${tape(planer.leastThickness)} that the planer takes`
        : `${thin.map((blank) => `${blankWords(blank)} ${tape(blank.thickness)}`).join(', ')}; alone the planer takes ${tape(planer.leastThickness)}`,
    reason: 'a thin piece flutters under the knives, breaks and is thrown',
    change:
      'plane it on a carrier board: flat, longer and wider than the piece, with a stop behind it and the piece held down by tape',
  };
}

function notHalfPlanedAway({ milled, boards }: Judged): Finding {
  const much = milled.flatMap((each) => {
    const board = boards.find(({ mark }) => mark === each.board);
    return board && takesTooMuch(board, each.blank) ? [{ ...each, from: board.thickness }] : [];
  });
  return {
    rule: 'no more than half the thickness planed away',
    verdict: judge(much.length === 0, 'watch'),
    figures:
      much.length === 0
        ? 'planing takes at most half of every board'
        : distinct(
            much.map(
              ({ blank, board, from, resawn }) =>
                `${blankWords(blank)} from board ${board}: ${tape(from)} down to ${tape(blank.thickness)}${resawn ? `; resawn to ${tape(resawn.thickness)} first, which the board gives ${resawn.gives === 1 ? 'once' : `${resawn.gives} times`}` : ''}`,
            ),
          ).join('. '),
    reason: 'the wood inside has other moisture and tension and bends anew, and the better half goes up in shavings',
    change:
      'resaw it with a flat face against the fence, sticker it until it has settled, then flatten and plane; or take a thinner board',
  };
}

/** Boards of one panel are alike: said once. */
function distinct(lines: string[]): string[] {
  return [...new Set(lines)];
}
