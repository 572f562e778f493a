import { expect, it } from 'vitest';
import { decisionSchemas } from '../../../kernel-helpers/src/record/decisions/decision-schemas.js';
import { typeface } from '../../../kernel-helpers/src/record/own/typeface-file.js';
import { surfaceDecision } from '../../../kernel-helpers/src/record/results/surface-decision.js';
import { planFinishing } from '../../../kernel-helpers/src/surface/finish/finishing.js';
import { planGluing } from '../../../kernel-helpers/src/surface/finish/gluing.js';
import { planSanding } from '../../../kernel-helpers/src/surface/finish/sanding.js';
import { layOutHandle } from '../../../kernel-helpers/src/surface/handle/handle.js';
import { layOutLettering } from '../../../kernel-helpers/src/surface/lettering/lettering.js';
import { orderOfWork } from '../../../kernel-helpers/src/surface/order-of-work.js';
import { chest } from '../../surface/lettering/shapes.js';

const lettering = layOutLettering({ box: chest, face: typeface('plain'), text: 'TEA', height: '1 in' });
const sanding = planSanding({ box: chest, kept: ['P120', 'P180', 'P220'], from: 'P120', to: 'P220' });
const gluing = planGluing({ glue: 'hide-liquid', joints: 4, minutesPerJoint: 1.5, temperatureC: 20, area: 10 });
const finishing = planFinishing({ areas: sanding.areas, finish: 'shellac', coats: 2, temperatureC: 20 });

function decided(kind: 'scoop' | 'raised pull' | 'none') {
  const handle = kind === 'none' ? undefined : layOutHandle({ box: chest, kind, lettering });
  const steps = orderOfWork({ handle: kind, sanding, gluing, finishing });
  return surfaceDecision({ lettering, handle, sanding, gluing, faces: { on: 'long grain' }, finishing, steps });
}

it('what a sheet on the surface decides can be recorded, with a handle and without', () => {
  for (const kind of ['scoop', 'none'] as const) {
    const decision = decided(kind);
    expect(decisionSchemas.surface.safeParse(decision).error).toBeUndefined();
    expect(decision.handle).toBe(kind);
  }
  expect(decided('scoop').handleBit).toEqual({ radius: 0.5, depth: 0.25, passes: 2 });
  expect(decided('none').handleBit).toBeUndefined();
  // A pull 1/2 in high: so much is taken down around it.
  expect(decided('raised pull').handleBit?.depth).toBe(0.5);
});

it('waits for glue, between coats and until the last has cured', () => {
  expect(decided('none').waits.map(({ hours }) => hours)).toEqual([24, 2, 168]);
});
