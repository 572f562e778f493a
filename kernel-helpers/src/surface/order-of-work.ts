import type { Finishing } from './finish/finishing.js';
import type { Gluing } from './finish/gluing.js';
import type { SandingPlan } from './finish/sanding.js';
import type { HandleKind } from './handle/laid-out-handle.js';

/** A step of the surface's work. */
export interface SurfaceStep {
  step: string;
  /** What it has to come before or after. */
  why: string;
  /** Hours to wait after it. */
  waitHours: number;
  when: 'before assembly' | 'assembly' | 'after assembly';
}

/**
 * The order in which lid, boards, glue and finish are done, and why in that order.
 *
 * @see common practice, no source
 */
export function orderOfWork(work: {
  handle: HandleKind | 'none';
  /** Letters cut into the lid; some unless told otherwise. */
  letters?: number;
  sanding: Pick<SandingPlan, 'outside' | 'inside'>;
  gluing: Pick<Gluing, 'glue'>;
  finishing: Pick<Finishing, 'finish' | 'coats' | 'recoatHours' | 'cureDays'>;
}): SurfaceStep[] {
  const { handle, letters = 1, sanding, gluing, finishing } = work;
  const grades = (steps: SandingPlan['outside']) => steps.map(({ id }) => id).join(', ');
  const last = sanding.outside.at(-1)?.id ?? '';
  const before = (step: string, why: string): SurfaceStep => ({ step, why, waitHours: 0, when: 'before assembly' });
  const after = (step: string, why: string, waitHours = 0): SurfaceStep => ({
    step,
    why,
    waitHours,
    when: 'after assembly',
  });
  const { clampMinutes, cureHours, type } = gluing.glue;
  const coats = Array.from({ length: finishing.coats }, (_, i): SurfaceStep => {
    const final = i === finishing.coats - 1;
    return after(
      `${finishing.finish.name}, coat ${i + 1}${finishing.finish.wipeOffMinutes ? `; wipe off after ${finishing.finish.wipeOffMinutes} minutes` : ''}`,
      final
        ? 'closed or packed before it has cured, it smells and sticks'
        : `the next coat needs this one dry${i === 0 ? '; both faces of the lid alike, or it cups' : ''}`,
      final ? 24 * finishing.cureDays : finishing.recoatHours,
    );
  });
  return [
    before(
      `Sand the lid's top up to the grade before ${last}`,
      letters > 0
        ? 'sanding after the cut rounds the edges of the letters and makes them shallower'
        : 'while it is flat and easy to clamp',
    ),
    ...(handle === 'none' ? [] : [before(`Cut the ${handle}`, 'while the lid is flat and easy to clamp')]),
    ...(letters > 0
      ? [before('Cut the lettering', 'before the tongue is fitted, while a spoilt lid costs least')]
      : []),
    before(
      `Sand the lid's top with ${last}, by hand, on a block`,
      'it takes the fuzz off the edges without sinking into what is cut',
    ),
    before(
      `Sand inside faces, both faces of the bottom and the lid's underside: ${grades(sanding.inside)}`,
      'nobody reaches the corners once it is together; tails, pins and grooves are left alone, they are the fit',
    ),
    before(
      'Finish the inside faces where they get any; keep it out of joints and grooves',
      'glue does not hold on finish',
    ),
    {
      step: `Glue up (${type.toLowerCase()}); square, and wipe off what squeezes out`,
      why: 'glue left on a face shows as a light spot under the finish',
      waitHours: Math.max(clampMinutes / 60, cureHours),
      when: 'assembly',
    },
    after(
      `Sand the outside and the ends of the joint: ${grades(sanding.outside)}`,
      'clamps and hands leave marks until then',
    ),
    after('Break the edges, vacuum, and look along every face against the light', 'what shows now shows for good'),
    ...coats,
  ];
}
