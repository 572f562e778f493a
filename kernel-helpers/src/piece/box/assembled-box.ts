import type { Part, SizedBox } from './size-box.js';

/** Front to back from the front's inside face, left to right from the left side's inside face, up from the bench. Inches. */
export type Place = readonly [lengthwise: number, crosswise: number, up: number];

/** A block with its faces along length, width and height. */
export interface Block {
  from: Place;
  to: Place;
}

/** A part in its place in the glued box: blocks of wood, less the grooves cut into them. */
export interface PlacedPart {
  part: Part['name'];
  /** Which of several: `left`, `right`. */
  which?: 'left' | 'right';
  blocks: Block[];
  grooves: Block[];
}

/**
 * The parts of a box where they stand once it is glued and its lid is pushed home. Where two boards cross at a corner both
 * blocks fill it: the joint shares it out.
 *
 * @param box  as sized
 * @returns each part's blocks and grooves; in
 */
export function assembledBox(box: SizedBox): PlacedPart[] {
  const { design, overall, markingGauge: gauge } = box;
  const { insideLength: L, insideWidth: W, insideDepth, stockThickness: t, foot, bottomThickness } = design;
  const height = overall.height;
  const lid = foot + bottomThickness + insideDepth;
  const block = (from: Place, to: Place): Block => ({ from, to });
  const [gb, gl, tongue] = [design.bottomGrooveDepth, design.lidGrooveDepth, design.tongueThickness];
  const bottomTop = foot + bottomThickness;
  const lidTongueTop = lid + tongue;
  return [
    {
      part: 'side',
      which: 'left',
      blocks: [block([-gauge, -t, 0], [L + gauge, 0, height])],
      grooves: [block([-gb, -gb, foot], [L + gb, 0, bottomTop]), block([-gauge, -gl, lid], [L + gl, 0, lidTongueTop])],
    },
    {
      part: 'side',
      which: 'right',
      blocks: [block([-gauge, W, 0], [L + gauge, W + t, height])],
      grooves: [
        block([-gb, W, foot], [L + gb, W + gb, bottomTop]),
        block([-gauge, W, lid], [L + gl, W + gl, lidTongueTop]),
      ],
    },
    {
      part: 'front',
      blocks: [block([-t, -gauge, 0], [0, W + gauge, lid])],
      grooves: [block([-gb, -gb, foot], [0, W + gb, bottomTop])],
    },
    {
      part: 'back',
      blocks: [block([L, -gauge, 0], [L + t, W + gauge, height])],
      grooves: [
        block([L, -gb, foot], [L + gb, W + gb, bottomTop]),
        block([L, -gl, lid], [L + gl, W + gl, lidTongueTop]),
      ],
    },
    { part: 'bottom', blocks: [bottomBlock(box)], grooves: [] },
    { part: 'lid', blocks: lidBlocks(box, lid), grooves: [] },
  ];
}

/** The bottom, in the middle of its grooves. */
function bottomBlock({ design, parts }: SizedBox): Block {
  const bottom = parts.find(({ name }) => name === 'bottom') as Part;
  const [lengthwise, crosswise] =
    bottom.grain === 'side to side' ? [bottom.width, bottom.length] : [bottom.length, bottom.width];
  const { insideLength: L, insideWidth: W, foot } = design;
  return {
    from: [(L - lengthwise) / 2, (W - crosswise) / 2, foot],
    to: [(L + lengthwise) / 2, (W + crosswise) / 2, foot + design.bottomThickness],
  };
}

/** The lid pushed home: its tongue, as large as the whole lid, and what the rabbets leave above it. */
function lidBlocks({ design, parts }: SizedBox, underside: number): Block[] {
  const lid = parts.find(({ name }) => name === 'lid') as Part;
  const { insideWidth: W, stockThickness: t, lidGrooveDepth: rabbet, tongueThickness } = design;
  const edge = (W - lid.width) / 2;
  const shoulder = underside + tongueThickness;
  return [
    { from: [-t, edge, underside], to: [lid.length - t, W - edge, shoulder] },
    {
      from: [-t, edge + rabbet, shoulder],
      to: [lid.length - t - rabbet, W - edge - rabbet, underside + design.lidThickness],
    },
  ];
}
