import type { Brief } from '../../box/brief.js';
import { overWidth } from '../../box/fitted-parts.js';
import type { SizedPiece } from '../../box/piece.js';
import type { SizedBox } from '../../box/size-box.js';
import { sizedBox } from '../../box/sized-box.js';
import type { CornerLayout } from '../../joints/corner.js';
import type { GrooveRun } from '../../joints/groove-runs.js';
import { formatLength } from '../../measure/length.js';
import type { SurfaceDecision } from '../../record/decisions.js';
import type { Blank } from '../../stock/blanks.js';
import { finish as finishType } from '../../surface/finishes.js';
import { glue as glueType } from '../../surface/glues.js';
import { moistureExcluding } from '../../wood/moisture-excluding.js';

/** What is set at the bench for an operation, a line each, by the operation's id. */
export type BenchSettings = Record<string, string[]>;

/**
 * Set-ups for the bench list, from what the sheets decided: rough and final sizes, gauge, dividers, bevel, passes, lid.
 *
 * @param decided.finish  id of data/moisture-excluding.json; empty for bare wood
 * @param decided.surface  grades, glue and finish, where a sheet decided them
 * @returns lines by the ids of data/operations.json
 */
export function benchSettings(decided: {
  units: Brief['units'];
  piece: SizedPiece;
  blanks: readonly Blank[];
  joint?: { layout: CornerLayout; firstBoards: string };
  grooves?: { runs: GrooveRun[]; passes: { name: string; fences: number[]; depths: number[] }[] };
  lid?: { fittedWidth: number; fittingMoisture: number; fittedTongue: number };
  finish: string;
  surface?: Pick<SurfaceDecision, 'grades' | 'glue' | 'finish'>;
}): BenchSettings {
  const { units, piece, blanks, joint, grooves, lid, finish, surface } = decided;
  const length = (inches: number) => formatLength(inches, { system: units, denominator: 64 });
  const size = (...sides: number[]) => sides.map(length).join(' x ');
  const { overall, parts } = piece;
  const settings: BenchSettings = {
    // Pieces too short for the planer stay in their blank until they are planed: they are never fed alone.
    'rough-cut': blanks.map(
      (blank) => `${inBlank(blank)}: ${size(blank.length, blank.width)}; cuts as numbered in sheet 07`,
    ),
    'flatten-and-thickness': [
      ...blanks.map((blank) => `${inBlank(blank)}: ${length(blank.thickness)} thick, planed whole`),
      ...(blanks.some((blank) => blank.parts.length > 1) ? ['then part the blanks by the numbered cuts'] : []),
    ],
    'final-size': parts.map((part) =>
      part.name === 'lid' && lid
        ? `${part.count} lid: ${size(part.length, lid.fittedWidth + overWidth)}: ${length(overWidth)} over, planed off when it is fitted`
        : `${part.count} ${part.name}: ${size(part.length, part.widthBefore ?? part.width)}`,
    ),
    sanding: ['inside faces and bottom only, never the joint or a groove', ...grades(surface?.grades.inside)],
    'clean-up': ['outside faces now', ...grades(surface?.grades.outside)],
    'glue-up': [
      `dry-fit first; outside ${size(overall.length, overall.width)}, diagonals alike`,
      'bottom goes in now',
      ...(surface ? [glueWords(surface.glue)] : []),
    ],
    'finish-1': surface ? [coatWords(surface.finish)] : finish === '' ? [] : [finishWords(finish)],
  };
  if (piece.kind !== 'box') return settings;
  const box = sizedBox(piece);
  return {
    ...settings,
    ...(joint ? jointSettings(joint.layout, joint.firstBoards, length) : {}),
    grooves: [
      ...stops(grooves?.runs ?? [], length),
      ...box.grooves.map(
        ({ board, groove, fromBottom, width, depth }) =>
          `${board}, ${groove}: ${length(fromBottom)} from the lower edge, ${length(width)} high, ${length(depth)} deep`,
      ),
      ...(grooves?.passes ?? []).map(
        ({ name, fences, depths }) =>
          `${name}: fence ${fences.map(length).join(', then ')} from the near side of the cutter; raise it to ${depths.map(length).join(', then ')}`,
      ),
      'chisel the stopped ends square',
      ...lowered(box, length),
    ],
    carving: ['lettering and handle as drawn in sheet 08; lettering.dxf holds the way of the bit'],
    lettering: ['lettering and handle as drawn in sheet 08; lettering.svg is full size, to trace'],
    lid: lid ? lidSettings(box, lid, length) : [],
  };
}

const inBlank = ({ name, parts }: Blank) => (parts.length > 1 ? `${name} (${parts.join(', ')})` : name);

/** Where each stopped groove begins and ends along its board. */
function stops(runs: readonly GrooveRun[], length: (inches: number) => string): string[] {
  return runs.map(({ board, groove, from, to, ends }) =>
    ends.every((end) => end === 'through')
      ? `${board}, ${groove}: through at both ends`
      : `${board}, ${groove}: from ${length(from)} to ${length(to)}${board === 'side' ? ' from the front end, the two sides mirrored' : ''}`,
  );
}

/** The front's upper edge comes down when joint and grooves are cut, and before it is glued in. */
function lowered({ parts }: SizedBox, length: (inches: number) => string): string[] {
  const front = parts.find(({ name }) => name === 'front');
  return front?.widthBefore
    ? [`front: its upper edge down to ${length(front.width)} from the lower, before glue-up`]
    : [];
}

function lidSettings(
  { design }: SizedBox,
  lid: { fittedWidth: number; fittingMoisture: number; fittedTongue: number },
  length: (inches: number) => string,
): string[] {
  return [
    `plane the lid to ${length(lid.fittedWidth)} at ${lid.fittingMoisture} % moisture; measure the moisture first`,
    `rabbet the upper face along both long edges and the back end: ${length(design.lidGrooveDepth)} wide, ${formatLength(design.lidThickness - lid.fittedTongue, { system: 'caliper' })} deep`,
    `so that the tongue is ${formatLength(lid.fittedTongue, { system: 'caliper' })} thick`,
  ];
}

const grades = (ids: string[] = []) => (ids.length > 0 ? [ids.join(', then ')] : []);

function glueWords({ id, assemblyMinutes, clampMinutes }: SurfaceDecision['glue']): string {
  const { type, openMinutes } = glueType(id);
  return `${type}: joined within ${openMinutes[0]} minutes of spreading, about ${assemblyMinutes.toFixed(0)} needed; ${clampMinutes} minutes in clamps at least; the label comes first`;
}

function coatWords({ id, coats, millilitres, recoatHours }: SurfaceDecision['finish']): string {
  const { name } = finishType(id);
  return `${name}, ${coats} ${coats === 1 ? 'coat' : 'coats'}, about ${millilitres.toFixed(0)} ml in all; ${recoatHours} hours between coats; the label comes first`;
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
        `marking gauge ${length(joint.gaugeSetting)}, dividers ${formatLength(joint.dividerSetting, { system: 'caliper' })}`,
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
