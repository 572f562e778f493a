import type { Brief } from '../../box/brief.js';
import type { Part, SizedBox } from '../../box/size-box.js';
import type { CornerLayout } from '../../joints/corner.js';
import { formatLength } from '../../measure/length.js';
import type { RoughPart } from '../../stock/rough-parts.js';

import { moistureExcluding } from '../../wood/moisture-excluding.js';

/** What is set at the bench for an operation, a line each, by the operation's id. */
export type BenchSettings = Record<string, string[]>;

/**
 * Set-ups for the bench list, from what the sheets decided: rough and final sizes, gauge, dividers, bevel, passes, lid.
 *
 * @param decided.finish  id of data/moisture-excluding.json; empty for bare wood
 * @returns lines by the ids of data/operations.json
 */
export function benchSettings(decided: {
  units: Brief['units'];
  box: SizedBox;
  rough: RoughPart[];
  joint: CornerLayout;
  firstBoards: string;
  grooves: { name: string; offsets: number[]; depths: number[] }[];
  lid: { fittedWidth: number; fittingMoisture: number };
  finish: string;
}): BenchSettings {
  const { units, box, rough, joint, grooves, lid, finish } = decided;
  const length = (inches: number) => formatLength(inches, { system: units, denominator: 64 });
  const size = (...sides: number[]) => sides.map(length).join(' x ');
  const { design, overall } = box;
  const wood = box.parts.filter(({ material }) => material === 'wood');
  const finished = (part: Part) => (part.name === 'lid' ? { ...part, width: lid.fittedWidth } : part);
  return {
    'rough-cut': rough.map(
      ({ name, count, length, width, called }) => `${count} ${name}: ${size(length, width)}, from ${called}`,
    ),
    'flatten-and-thickness': wood.map(({ name, count, thickness }) => `${count} ${name}: ${length(thickness)} thick`),
    'final-size': box.parts
      .map(finished)
      .map(({ name, count, length, width, widthBefore }) => `${count} ${name}: ${size(length, widthBefore ?? width)}`),
    ...jointSettings(joint, decided.firstBoards, length),
    grooves: [
      ...box.grooves.map(
        ({ board, groove, fromBottom, width, depth }) =>
          `${board}, ${groove}: ${length(fromBottom)} from the lower edge, ${length(width)} high, ${length(depth)} deep`,
      ),
      ...grooves.map(
        ({ name, offsets, depths }) =>
          `${name}: fence ${offsets.map(length).join(', ')}; cutter ${depths.map(length).join(', ')} high`,
      ),
    ],
    lid: [
      `plane to ${length(lid.fittedWidth)} at ${lid.fittingMoisture} % moisture; measure the moisture first`,
      `tongue ${length(design.tongueThickness)} thick`,
    ],
    'glue-up': [`dry-fit first; outside ${size(overall.length, overall.width)}, diagonals alike`, 'bottom goes in now'],
    'finish-1': finish === '' ? [] : [finishWords(finish)],
  };
}

function finishWords(id: string): string {
  const { finish, coats } = moistureExcluding(id);
  return `${finish}, ${coats} ${coats === 1 ? 'coat' : 'coats'}`;
}

function jointSettings(joint: CornerLayout, firstBoards: string, length: (inches: number) => string): BenchSettings {
  if ('tails' in joint)
    return {
      'lay-out-joint': [
        `${joint.tails.length} tails on ${firstBoards}`,
        `marking gauge ${length(joint.gaugeSetting)}, dividers ${length(joint.dividerSetting)}`,
        `bevel ${joint.sawAngle.toFixed(1)} degrees, one across to ${joint.slope} along`,
      ],
      'cut-joint': ['both tail boards together; trace the pins from the tails'],
    };
  const { count, fingerWidth, setUp } = joint;
  return {
    'cut-fingers': [
      `${count} fingers of ${length(fingerWidth)}`,
      `cutter ${length(setUp.cutterHeight)} high, key ${length(setUp.keyDistance)} from it, ${setUp.passes} passes a socket`,
      'try the fit on offcuts of the same thickness first',
    ],
  };
}
