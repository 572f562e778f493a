import type { Finding } from '../measure/finding.js';
import { coefficientRange, movement } from './movement.js';
import { species } from './species.js';

/**
 * How far the figures that a movement was worked with can be trusted: whether the moistures are ones that the handbook's
 * coefficients are given for, and whether a larger figure than the wood's own was taken.
 *
 * @param moving.piece  what moves, for the rule: `lid`
 * @param moving.moistures  all that it meets, the day of fitting with them, %
 * @see Wood Handbook FPL-GTR-190 (2010), table 13-5 (6 to 14 %); the larger of two figures: common practice, no source
 */
export function movementFindings(moving: {
  piece: string;
  species: string;
  ringAngle: number;
  moistures: number[];
}): Finding[] {
  const { piece, ringAngle, moistures } = moving;
  const [driest, wettest] = [Math.min(...moistures), Math.max(...moistures)];
  const { least, most } = coefficientRange;
  const move = movement({ across: 1, species: moving.species, ringAngle, fromMoisture: driest, toMoisture: wettest });
  const within = driest >= least && wettest <= most;
  const own = species(moving.species);
  const findings: Finding[] = [
    {
      rule: `${piece}: moistures that the coefficients are for`,
      verdict: within ? 'ok' : 'watch',
      figures: `${driest.toFixed(1)} to ${wettest.toFixed(1)} %; coefficients are for ${least} to ${most} %`,
      reason: `outside, the change is worked from the shrinkage green to dry, as if it were even from ${own.fibreSaturation} % down: near enough, but read off no table`,
      change: 'keep more room than the least, or keep the house within these moistures (humidifier, dehumidifier)',
    },
  ];
  const { passedOver, basis, wood, tangential, radial } = move.method;
  if (passedOver === undefined) return findings;
  const turn = (ringAngle * Math.PI) / 180;
  const taken = tangential * Math.cos(turn) ** 2 + radial * Math.sin(turn) ** 2;
  const mixed = wood !== own.id;
  findings.push({
    rule: `${piece}: which movement figure`,
    verdict: 'watch',
    figures: `${taken.toFixed(5)} for 1 %, of ${mixed ? `${species(wood).commonName}, ` : ''}the ${basis}; passed over: ${passedOver.toFixed(5)}`,
    reason: mixed
      ? 'yards sell these woods as one, so the larger of their figures is used'
      : 'coefficient and shrinkage printed for this wood disagree, so the larger is used',
    change: 'measure a board of your own through a season and add it as a wood of your own, if the room matters',
  });
  return findings;
}
