import { sandingMinutes } from '../../money/sanding-minutes.js';
import type { Finishing } from '../../surface/finish/finishing.js';
import type { GluedFaces } from '../../surface/finish/glued-faces.js';
import type { Gluing } from '../../surface/finish/gluing.js';
import type { SandingPlan } from '../../surface/finish/sanding.js';
import type { Handle } from '../../surface/handle/laid-out-handle.js';
import type { Lettering } from '../../surface/lettering/laid-out-lettering.js';
import type { SurfaceStep } from '../../surface/order-of-work.js';
import type { SurfaceDecision } from '../decisions/decisions.js';

/**
 * What a sheet on the surface decides, as later sheets need it.
 *
 * @param worked.handle  nothing where the lid has none
 */
export function surfaceDecision(worked: {
  lettering: Lettering;
  handle?: Handle | undefined;
  sanding: SandingPlan;
  gluing: Gluing;
  faces: Pick<GluedFaces, 'on'>;
  finishing: Finishing;
  steps: readonly SurfaceStep[];
}): SurfaceDecision {
  const { lettering, handle, sanding, gluing, faces, finishing, steps } = worked;
  const squareFeet = (areas: SandingPlan['areas']) => areas.reduce((sum, { area }) => sum + area, 0) / 144;
  const { id, clampMinutes, cureHours } = gluing.glue;
  const { coats, inside, recoatHours, cureDays } = finishing;
  return {
    text: lettering.text,
    letters: lettering.letters,
    letteringMinutes: lettering.minutes,
    deepest: lettering.deepest.depth,
    remaining: lettering.remaining,
    bitAngle: lettering.bitAngle,
    ...(handle
      ? { handleBit: { radius: handle.bitDiameter / 2, depth: handle.depth || handle.height, passes: handle.passes } }
      : {}),
    handle: handle?.kind ?? 'none',
    lidStock: handle?.lidStock ?? lettering.field.thickness,
    removed: sanding.removed,
    proudAfter: sanding.proudAfter,
    grades: { outside: sanding.outside.map((grade) => grade.id), inside: sanding.inside.map((grade) => grade.id) },
    sandingMinutes: sandingMinutes(sanding.sanded).inAll,
    sanded: sanding.sanded,
    area: squareFeet(sanding.areas),
    areaBeforeAssembly: squareFeet(sanding.areas.filter(({ sanded }) => sanded === 'before assembly')),
    glue: {
      ...{ id, assemblyMinutes: gluing.assemblyMinutes, clampMinutes, cureHours },
      ...{ millilitres: gluing.millilitres, on: faces.on },
    },
    finish: {
      ...{ id: finishing.finish.id, coats, inside, squareFeet: finishing.squareFeet, recoatHours, cureDays },
      ...{ millilitres: finishing.millilitres, oilyRags: finishing.finish.oilyRags },
    },
    waits: steps
      .filter(({ waitHours }) => waitHours > 0)
      .map(({ step, waitHours }) => ({ after: step, hours: waitHours })),
  };
}
