import type { CornerLayout } from '../../joints/corner.js';
import { routerWords } from '../../joints/groove-routing.js';
import type { GrooveRun } from '../../joints/groove-runs.js';
import { formatLength } from '../../measure/length.js';
import { sawnLidWidth } from '../../piece/box/fitted-parts.js';
import type { SizedBox } from '../../piece/box/sized-box.js';
import { sizedBox } from '../../piece/box/sized-box.js';
import type { Brief } from '../../piece/brief.js';
import type { PiecePart, SizedPiece } from '../../piece/piece.js';
import type { GrooveDecision, SurfaceDecision } from '../../record/decisions/decisions.js';
import { chalkMarks } from '../../stock/cutting/chalk-marks.js';
import { finish as finishType } from '../../surface/finish/finishes.js';
import { glue as glueType } from '../../surface/finish/glues.js';
import type { GluedPanels } from '../../surface/finish/panel-gluing.js';
import { moistureExcluding } from '../../wood/drying/moisture-excluding.js';
import type { BenchSettings } from './bench-list.js';
import { flatteningLines, type Milled, partingLines, roughCutLines } from './milling-settings.js';
import { panelSettings } from './panel-settings.js';

type Length = (inches: number) => string;
type Surface = Pick<
  SurfaceDecision,
  'letters' | 'grades' | 'glue' | 'finish' | 'bitAngle' | 'deepest' | 'handle' | 'handleBit' | 'proudAfter'
>;

/**
 * Set-ups for the bench list, from what the sheets decided: boards, what is chalked on the parts, rough and final sizes, gauge,
 * dividers, bevel, passes, lid, grades, glue and finish.
 *
 * @param decided.finish  id of data/moisture-excluding.json; empty for bare wood
 * @param decided.surface  grades, glue, finish, lettering and handle, where a sheet decided them
 * @returns lines by the ids of data/operations.json
 */
export function benchSettings(decided: {
  units: Brief['units'];
  piece: SizedPiece;
  stock: { boards: { mark: string }[]; sheets: { mark: string }[] } & Milled & Partial<GluedPanels>;
  joint?: { layout: CornerLayout; firstBoards: string };
  grooves?: GrooveDecision;
  lid?: { fittedWidth: number; fittingMoisture: number; fittedTongue: number };
  finish: string;
  surface?: Surface;
}): BenchSettings {
  const { units, piece, stock, joint, grooves, lid, finish, surface } = decided;
  const { blanks } = stock.toCut;
  const length = (inches: number) => formatLength(inches, { system: units, denominator: 64 });
  const size = (...sides: number[]) => sides.map(length).join(' x ');
  const { overall, parts } = piece;
  const marks = (list: { mark: string }[]) => list.map(({ mark }) => mark).join(', ');
  const marked = Object.entries(chalkMarks({ parts, blanks, lengths: units }));
  const settings: BenchSettings = {
    'choose-boards': [
      `boards ${marks(stock.boards)}${stock.sheets.length > 0 ? `; sheet ${marks(stock.sheets)}` : ''}: where each part lies is drawn in sheet 07`,
      `chalk on every part its name and its outside face${marked.length > 0 ? '; on the four boards around, the lower edge too' : ''}`,
      ...marked.filter(([, { words }]) => words).map(([name, { words }]) => `${name}: ${words}`),
    ],
    'rough-cut': roughCutLines(stock, length),
    'flatten-and-thickness': flatteningLines(stock, length),
    'final-size': [
      ...partingLines(stock),
      ...parts.map((part) =>
        part.name === 'lid' && lid
          ? `${part.count} lid: ${size(part.length, sawnLidWidth(lid))}; planed to ${length(lid.fittedWidth)} when it is fitted`
          : `${part.count} ${part.name}${part.material === 'plywood' ? ', plywood' : ''}: ${size(part.length, part.widthBefore ?? part.width)}`,
      ),
    ],
    ...panelSettings(stock, length),
    sanding: [`${insideFaces(parts)}; never the joint or a groove`, ...inOrder(surface?.grades.inside)],
    'clean-up': [
      `plane ends and edges alike${surface && surface.proudAfter > 0 ? `; the ends stay about ${length(surface.proudAfter)} proud once all is sanded` : ''}`,
    ],
    'sanding-outside': [
      'the outside and the ends of the joint',
      ...inOrder(surface?.grades.outside),
      'then break every edge alike, and look along every face against the light',
    ],
    'hand-over': ['what the care note says stands on the quote: Living with it'],
    'glue-up': [
      `dry-fit first; outside ${size(overall.length, overall.width)}, diagonals alike`,
      ...(parts.some(({ name }) => name.includes('bottom')) ? ['the bottom goes in now'] : []),
      ...(surface ? [glueWords(surface.glue)] : []),
    ],
    'finish-1': surface ? coatWords(surface.finish) : finish === '' ? [] : [finishWords(finish)],
  };
  if (piece.kind !== 'box') return settings;
  const box = sizedBox(piece);
  return {
    ...settings,
    'glue-up': [...(settings['glue-up'] ?? []), ...(joint ? clamping(joint.layout, surface?.glue.on, length) : [])],
    ...(joint ? jointSettings(joint.layout, joint.firstBoards, length) : {}),
    grooves: [
      ...stops(grooves?.runs ?? [], length),
      ...box.grooves.map(
        ({ board, groove, fromBottom, width, depth }) =>
          `${board}, ${groove}: ${length(fromBottom)} from the lower edge, ${length(width)} high, ${length(depth)} deep`,
      ),
      ...(grooves ? routing(grooves, length) : []),
      'chisel the stopped ends square',
      ...loweredFront(box, length),
    ],
    carving: surface
      ? letteringWords(
          surface,
          'the cutter follows lettering.dxf, the letters only, in inches, zero on the top of the lid at the middle of its front end, y towards the back, depths below zero',
          length,
        )
      : [],
    lettering: surface ? letteringWords(surface, 'trace the letters from it', length) : [],
    lid: [
      // Without letters the lid's fitting is the first step at which somebody sees to its handle.
      ...(surface?.letters === 0 ? letteringWords(surface, '', length) : []),
      ...(lid ? lidSettings(box, lid, length) : []),
    ],
  };
}

/** Where each stopped groove begins and ends along its board. */
function stops(runs: readonly GrooveRun[], length: Length): string[] {
  return runs.map(({ board, groove, from, to, ends }) =>
    ends.every((end) => end === 'through')
      ? `${board}, ${groove}: through at both ends`
      : `${board}, ${groove}: from ${length(from)} to ${length(to)}${board === 'side' ? ' from the front end, the two sides mirrored' : ''}`,
  );
}

/** How each groove is set up, and which way work or router goes. */
function routing({ passes, routing }: GrooveDecision, length: Length): string[] {
  const { machine = 'router table', lines = [] } = routing ?? {};
  const { setting } = routerWords(machine);
  return [
    ...passes.map(
      ({ name, cutter, fences, depths }) =>
        `${name}, bit of ${length(cutter)}: ${setting(fences.map(length).join(', then '), depths.map(length).join(', then '))}`,
    ),
    ...lines,
  ];
}

/** The front's upper edge comes down when joint and grooves are cut, and before it is glued in. */
function loweredFront({ parts }: SizedBox, length: Length): string[] {
  const front = parts.find(({ name }) => name === 'front');
  return front?.widthBefore
    ? [`front: its upper edge down to ${length(front.width)} from the lower, before glue-up`]
    : [];
}

function lidSettings(
  { design }: SizedBox,
  lid: { fittedWidth: number; fittingMoisture: number; fittedTongue: number },
  length: Length,
): string[] {
  const caliper = (inches: number) => formatLength(inches, { system: 'caliper' });
  const deep = design.lidThickness - lid.fittedTongue;
  const passes = Math.max(1, Math.ceil(deep / lightPass - 1e-9));
  const depths = Array.from({ length: passes }, (_, i) => (deep * (i + 1)) / passes);
  return [
    'measure the moisture first: where the meter reads otherwise, take the width from the table in sheet 04',
    `plane the lid to ${length(lid.fittedWidth)} at ${lid.fittingMoisture} % moisture, as much off either edge, so that its middle line stays the middle`,
    `rabbet the upper face along both long edges and the back end, ${length(design.lidGrooveDepth)} wide, with a straight cutter at least as wide, until the tongue is ${caliper(lid.fittedTongue)} thick`,
    `raise the cutter to ${depths.map(caliper).join(', then ')} in a lid still ${length(design.lidThickness)} thick; to less by as much as sanding took off`,
  ];
}

/** Deepest pass of a rabbet: common practice, no source. In. */
const lightPass = 1 / 8;

const inOrder = (ids: string[] = []) => (ids.length > 0 ? [ids.join(', then ')] : []);

function insideFaces(parts: readonly PiecePart[]): string {
  const also = [
    ...(parts.some(({ material }) => material === 'plywood') ? ['both faces of the plywood'] : []),
    ...(parts.some(({ name }) => name === 'lid') ? ["the lid's underside"] : []),
  ];
  return ['inside faces', ...also].join(', ');
}

/** What lid, letters and handle go through, in their order: sanding after the cut rounds the letters. */
function letteringWords(
  { grades, letters, bitAngle, deepest, handle, handleBit }: Surface,
  how: string,
  length: Length,
): string[] {
  const last = grades.outside.at(-1) ?? '';
  const before = grades.outside.slice(0, -1);
  const bit = (of: NonNullable<typeof handleBit>) =>
    `${handle}: round bit of ${length(2 * of.radius)}, ${length(of.depth)} ${handle === 'raised pull' ? 'down all around it' : 'deep'} in ${of.passes} ${of.passes === 1 ? 'pass' : 'passes'}; its place is in the table of sheet 08`;
  return [
    ...(before.length > 0 ? [`sand the lid's top first: ${before.join(', then ')}`] : []),
    ...(letters > 0 || handleBit
      ? [
          'mark the middle line of the lid, carry it onto both ends, and mark which end is the front: all places are from them',
        ]
      : []),
    ...(handleBit ? [bit(handleBit)] : []),
    ...(letters > 0
      ? [
          `letters: V-bit of ${bitAngle} degrees, no deeper than ${formatLength(deepest, { system: 'caliper' })}; lettering-template.html is full size: ${how}`,
        ]
      : []),
    `then ${last} by hand, on a block`,
  ];
}

/** Where glue goes in the joint, and what keeps clamps off ends that stand proud: common practice, no source. */
function clamping(layout: CornerLayout, on: SurfaceDecision['glue']['on'], length: Length): string[] {
  const sides = 'tails' in layout ? 'tails and pins' : 'the fingers';
  const faces = {
    'long grain': `glue on the sides of ${sides}, where long grain meets long grain`,
    'all faces': `glue on every face of ${sides}, end grain too`,
    'inner third': `glue on the inner third of the sides of ${sides} alone`,
  };
  return [
    ...(on ? [faces[on]] : []),
    ...(layout.proud > 0
      ? [`clamp over notched cauls: the ends stand ${length(layout.proud)} proud of the faces`]
      : []),
  ];
}

function glueWords({ id, assemblyMinutes, clampMinutes }: SurfaceDecision['glue']): string {
  const { type, openMinutes } = glueType(id);
  return `${type}: joined within ${openMinutes[0]} minutes of spreading, about ${assemblyMinutes.toFixed(0)} needed; ${clampMinutes} minutes in clamps at least; the label comes first`;
}

function coatWords({ id, coats, inside, millilitres, recoatHours }: SurfaceDecision['finish']): string[] {
  const { name } = finishType(id);
  return [
    `${name}, ${coats} ${coats === 1 ? 'coat' : 'coats'}, about ${millilitres.toFixed(0)} ml in all; ${recoatHours} hours between coats; the label comes first`,
    inside ? 'the inside gets it too' : 'the inside stays bare; both faces of the lid alike, or it cups',
  ];
}

function finishWords(id: string): string {
  const { finish, coats } = moistureExcluding(id);
  return `${finish}, ${coats} ${coats === 1 ? 'coat' : 'coats'}`;
}

function jointSettings(joint: CornerLayout, firstBoards: string, length: Length): BenchSettings {
  if ('tails' in joint)
    return {
      'lay-out-joint': [
        `${joint.tails.length} tails on ${firstBoards}; half pins ${length(joint.pins[0]?.to ?? 0)} at the lower edge, ${length(joint.boardWidth - (joint.pins.at(-1)?.from ?? 0))} at the upper; joint-template.html is full size`,
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
