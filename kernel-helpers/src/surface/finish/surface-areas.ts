import type { Part, SizedBox } from '../../piece/box/sized-box.js';

/** A kind of face of the box. */
export interface SurfaceArea {
  face:
    | 'outside of the boards'
    | 'inside of the boards'
    | 'top edges'
    | 'lid, top'
    | 'lid, underside'
    | 'bottom, inside'
    | 'bottom, underside';
  /** Square inches. */
  area: number;
  /** When it is sanded: inside faces cannot be reached afterwards. */
  sanded: 'before assembly' | 'after assembly';
  /** Sanded least, and finished only where the inside is. The lid's underside is not: a lid finished on one face cups. */
  inside: boolean;
}

/**
 * The faces of a box that are sanded and finished. Grooves, tongues and the ends of the joint are left out.
 *
 * @param box  as `sizeBox` returns it
 * @returns square inches
 * @see geometry
 */
export function surfaceAreas({ parts, design }: SizedBox): SurfaceArea[] {
  const part = (name: Part['name']) => parts.find((each) => each.name === name) as Part;
  const [side, front, back, lid] = [part('side'), part('front'), part('back'), part('lid')];
  const { insideLength, insideWidth, stockThickness, foot, bottomThickness, proud, lidGrooveDepth } = design;
  const above = foot + bottomThickness;
  const outside =
    2 * (side.length - 2 * proud) * side.width +
    (front.length - 2 * proud) * front.width +
    (back.length - 2 * proud) * back.width;
  const inside =
    2 * insideLength * (side.width - above) + insideWidth * (front.width - above) + insideWidth * (back.width - above);
  const floor = insideLength * insideWidth;
  const edges = 2 * side.length * stockThickness + 2 * insideWidth * stockThickness;
  return [
    { face: 'outside of the boards', area: outside, sanded: 'after assembly', inside: false },
    { face: 'inside of the boards', area: inside, sanded: 'before assembly', inside: true },
    { face: 'top edges', area: edges, sanded: 'after assembly', inside: false },
    {
      face: 'lid, top',
      area: (lid.length - lidGrooveDepth) * (lid.width - 2 * lidGrooveDepth),
      sanded: 'before assembly',
      inside: false,
    },
    { face: 'lid, underside', area: lid.length * lid.width, sanded: 'before assembly', inside: false },
    { face: 'bottom, inside', area: floor, sanded: 'before assembly', inside: true },
    { face: 'bottom, underside', area: floor, sanded: 'before assembly', inside: false },
  ];
}
