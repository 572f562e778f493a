import type { Panel } from '../../stock/milling/panels.js';
import type { PanelGluing } from '../../surface/finish/panel-gluing.js';
import { type DrawingOptions, dimensionText } from '../drawing/kit/lengths.js';
import type { DisplayItem } from '../kit/display.js';
import { table } from '../kit/table.js';

const right = (head: string) => ({ head, align: 'right' as const });

/**
 * The parts that are glued up: how many boards each, how wide they are ripped and jointed, how the panel is clamped.
 *
 * @param panels  as `roughCut` gives them; inches
 * @param gluing  as `planPanelGluing` gives it for them
 */
export function panelTable(panels: readonly Panel[], gluing: PanelGluing, options: DrawingOptions = {}): DisplayItem {
  // More lengths in both systems than a page is wide.
  const show = dimensionText(options);
  const joints = panels.reduce((sum, { edgeJoints }) => sum + edgeJoints, 0);
  return table({
    columns: [
      'Glued up',
      right('Boards in each'),
      right('Edge joints'),
      right('Ripped'),
      right('Jointed'),
      right('As glued, wide'),
      right('thick'),
      right('Clamps'),
      right('Apart'),
      'Flattened',
    ],
    rows: panels.map(({ part, count, boards, edgeJoints, board, glued, flattened }, index) => {
      const { clamps = 0, spacing = 0 } = gluing.panels[index] ?? {};
      return [
        count === 1 ? part : `${count} ${part}`,
        `${boards}`,
        `${edgeJoints}`,
        ...[board.roughWidth, board.width, glued.width, glued.thickness].map(show),
        `${clamps}`,
        show(spacing),
        flattened,
      ];
    }),
    caption:
      `${joints} edge ${joints === 1 ? 'joint' : 'joints'}; pressure about ${gluing.pressure.toFixed(0)} psi ` +
      `(${(gluing.pressure * 6.895).toFixed(0)} kPa), glue about ${gluing.millilitres.toFixed(0)} ml, ` +
      `${gluing.glue.clampMinutes} minutes in clamps; clamps under and over the panel in turn`,
  });
}
