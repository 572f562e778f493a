import type { Panel } from '../../stock/milling/panels.js';
import { glue as glueType } from '../../surface/finish/glues.js';
import type { GluedPanels } from '../../surface/finish/panel-gluing.js';
import type { BenchSettings } from './bench-list.js';

/** What is set when boards are glued edge to edge, and when the panels are flattened; nothing where there is no panel. @internal */
export function panelSettings(
  { panels = [], panelGluing }: Partial<GluedPanels>,
  length: (inches: number) => string,
): BenchSettings {
  if (panels.length === 0) return {};
  const size = ({ width, thickness }: Panel['glued']) => `${length(width)} wide, ${length(thickness)} thick`;
  const flat = (how: Panel['flattened']) =>
    panels
      .filter(({ flattened }) => flattened === how)
      .map(
        ({ part, count, finished }) =>
          `${count} ${part}: to ${length(finished.thickness)} thick, as much off either face`,
      );
  return {
    'edge-joints': [
      'joint the edges in pairs, one face to the fence and the next away from it: an angle that is not square cancels out',
      'rings in turn up and down, or all one way under battens; chalk a triangle over each panel, so that its order stays',
      ...panels.map(
        ({ part, count, boards, board, glued }) =>
          `${count} ${part}: ${boards} boards each, jointed to ${length(board.width)}; glued up ${size(glued)}`,
      ),
      ...clampLines(panelGluing, length),
    ],
    'flatten-panels': flat('by planer'),
    'flatten-by-hand': [
      ...flat('by hand'),
      'wider than the planer takes: by hand plane across the grain, then along it; a drum sander or a wider planer elsewhere does as well',
    ],
  };
}

function clampLines(gluing: GluedPanels['panelGluing'] | undefined, length: (inches: number) => string): string[] {
  if (!gluing) return [];
  const { type, openMinutes } = glueType(gluing.glue);
  return [
    ...gluing.panels.map(
      ({ part, clamps, spacing }) =>
        `${part}: ${clamps} clamps, ${length(spacing)} from one to the next and half of it from the ends, under and over the panel in turn`,
    ),
    `${type}: joined within ${openMinutes[0]} minutes of spreading, ${gluing.clampMinutes} minutes in clamps at least; about ${gluing.millilitres.toFixed(0)} ml in all; the label comes first`,
  ];
}
