import type { Finding } from '../measure/finding.js';
import { judge, tape } from '../measure/verdict.js';
import type { BoxDesign } from '../piece/box/sized-box.js';
import { type CornerLayout, cornerPieces } from './corner.js';
import type { GrooveRun } from './groove-runs.js';
import { nearestHiddenHeight } from './hidden-heights.js';

/** Field of the box that moves a groove up or down. */
const heightField = { bottom: 'foot', lid: 'insideDepth' } as const satisfies Record<string, keyof BoxDesign>;

/**
 * What must be true of the grooves at the corners: none comes out where it shows, none lies across the line between two
 * pieces of the joint, and a stopped groove leaves wood before the end.
 *
 * @param grooves.runs  as from `grooveRuns`
 * @param grooves.layout  the corner's layout
 * @returns findings, each with the nearest height or stop that is possible, where there is one
 * @see common practice, no source
 */
export function grooveFindings(grooves: { runs: GrooveRun[]; layout: CornerLayout }): Finding[] {
  const { runs, layout } = grooves;
  const kinds = [...new Set(runs.map(({ groove }) => groove))];
  return [
    ...kinds.flatMap((kind) => straddling(runs.filter(({ groove }) => groove === kind)[0] as GrooveRun, layout)),
    ...kinds.map((kind) =>
      showing(
        kind,
        runs.filter(({ groove }) => groove === kind),
        layout,
      ),
    ),
    ...kinds.flatMap((kind) =>
      beforeTheEnd(
        kind,
        runs.filter(({ groove }) => groove === kind),
        layout,
      ),
    ),
  ];
}

function straddling(run: GrooveRun, layout: CornerLayout): Finding {
  const { groove, fromBottom, width, straddles } = run;
  const nearest = nearestHiddenHeight({ fromBottom, width, layout });
  const { piece } = cornerPieces(layout);
  const pieces = [...new Set([piece.first, piece.second])];
  const moved = nearest === undefined ? 0 : nearest - fromBottom;
  return {
    rule: `${groove} groove behind one ${pieces.join(' or one ')}`,
    verdict: judge(!straddles, 'watch'),
    figures: `from ${tape(fromBottom)} to ${tape(fromBottom + width)} above the lower edge`,
    reason: 'across the line between two of them neither board hides its end, and it must be stopped on both',
    change:
      nearest === undefined
        ? `no ${pieces.join(' or ')} is as wide as the groove: make them wider, or fewer`
        : `lower edge of the groove at ${tape(nearest)}: ${heightField[groove]} ${moved < 0 ? 'less' : 'more'} by ${tape(Math.abs(moved))}, or other ${'tails' in layout ? 'half pins' : 'fingers'}`,
  };
}

function showing(kind: GrooveRun['groove'], runs: GrooveRun[], layout: CornerLayout): Finding {
  const shown = runs.filter(({ shows }) => shows);
  const [run = runs[0] as GrooveRun] = shown;
  return {
    rule: `${kind} groove not through the joint`,
    verdict: judge(shown.length === 0, 'stop'),
    figures:
      shown.length === 0
        ? 'runs out only behind the neighbour, or where the lid goes in'
        : `run out at the ends of ${shown.map(({ board }) => board).join(' and ')}`,
    reason: 'a groove run out through a joint leaves a square hole in the outside',
    change: `stop it ${tape(layout.gaugeSetting - run.depth)} from the end, or plug the hole with wood of the same grain`,
  };
}

function beforeTheEnd(kind: GrooveRun['groove'], runs: GrooveRun[], layout: CornerLayout): Finding[] {
  const stopped = runs.filter(({ ends }) => ends.includes('stopped'));
  if (stopped.length === 0) return [];
  const { depth, roundEnd = 0 } = stopped[0] as GrooveRun;
  const left = layout.gaugeSetting - depth - roundEnd;
  return [
    {
      rule: `wood before the end of a stopped ${kind} groove`,
      verdict: left <= 0 ? 'stop' : judge(left >= 1 / 8, 'watch'),
      absolute: 'impossible',
      figures: `${tape(Math.max(0, left))} left${roundEnd > 0 ? `, the cutter's radius of ${tape(roundEnd)} taken off` : ''}`,
      reason: 'a thin end breaks out while the joint is driven home, and the groove shows after all',
      change: `a groove at most ${tape(Math.max(1 / 32, layout.gaugeSetting - roundEnd - 1 / 8))} deep${roundEnd > 0 ? ', a smaller cutter, or an end squared with a chisel' : ''}`,
    },
  ];
}
