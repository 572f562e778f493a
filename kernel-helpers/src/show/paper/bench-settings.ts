import type { Brief } from '../../box/brief.js';
import type { PiecePart, SizedPiece } from '../../box/piece.js';
import type { SizedBox } from '../../box/size-box.js';
import { sizedBox } from '../../box/sized-box.js';
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
  piece: SizedPiece;
  rough: RoughPart[];
  joint?: { layout: CornerLayout; firstBoards: string };
  grooves?: { name: string; offsets: number[]; depths: number[] }[];
  lid?: { fittedWidth: number; fittingMoisture: number; fittedTongue: number };
  finish: string;
}): BenchSettings {
  const { units, piece, rough, joint, grooves = [], lid, finish } = decided;
  const length = (inches: number) => formatLength(inches, { system: units, denominator: 64 });
  const size = (...sides: number[]) => sides.map(length).join(' x ');
  const { overall, parts } = piece;
  const wood = parts.filter(({ material }) => material === 'wood');
  const finished = (part: PiecePart) => (part.name === 'lid' && lid ? { ...part, width: lid.fittedWidth } : part);
  const settings: BenchSettings = {
    'rough-cut': rough.map(
      ({ name, count, length, width, called }) => `${count} ${name}: ${size(length, width)}, from ${called}`,
    ),
    'flatten-and-thickness': wood.map(({ name, count, thickness }) => `${count} ${name}: ${length(thickness)} thick`),
    'final-size': parts
      .map(finished)
      .map(({ name, count, length, width, widthBefore }) => `${count} ${name}: ${size(length, widthBefore ?? width)}`),
    'glue-up': [`dry-fit first; outside ${size(overall.length, overall.width)}, diagonals alike`, 'bottom goes in now'],
    'finish-1': finish === '' ? [] : [finishWords(finish)],
  };
  if (piece.kind !== 'box') return settings;
  const box = sizedBox(piece);
  return {
    ...settings,
    ...(joint ? jointSettings(joint.layout, joint.firstBoards, length) : {}),
    grooves: [
      ...box.grooves.map(
        ({ board, groove, fromBottom, width, depth }) =>
          `${board}, ${groove}: ${length(fromBottom)} from the lower edge, ${length(width)} high, ${length(depth)} deep`,
      ),
      ...grooves.map(
        ({ name, offsets, depths }) =>
          `${name}: fence ${offsets.map((offset) => length(fromBottom(box, name) + offset)).join(', then ')} from the near side of the cutter; cutter ${depths.map(length).join(', ')} high`,
      ),
      'chisel the stopped ends square',
    ],
    lid: lid ? lidSettings(box, lid, length) : [],
  };
}

/** Lower edge of a kind of groove, in. */
function fromBottom(box: SizedBox, kind: string): number {
  return box.grooves.find(({ groove }) => groove === kind)?.fromBottom ?? 0;
}

function lidSettings(
  { design, parts }: SizedBox,
  lid: { fittedWidth: number; fittingMoisture: number; fittedTongue: number },
  length: (inches: number) => string,
): string[] {
  const front = parts.find(({ name }) => name === 'front');
  return [
    ...(front?.widthBefore
      ? [`lower the front first: its upper edge down to ${length(front.width)} from the lower`]
      : []),
    `plane the lid to ${length(lid.fittedWidth)} at ${lid.fittingMoisture} % moisture; measure the moisture first`,
    `rabbet the upper face along both long edges and the back end: ${length(design.lidGrooveDepth)} wide, ${length(design.lidThickness - lid.fittedTongue)} deep`,
    `so that the tongue is ${formatLength(lid.fittedTongue, { system: 'caliper' })} thick`,
  ];
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
