/** From and to, inches. */
export type Span = readonly [from: number, to: number];

/** A block with its faces along the three axes: x from left to right, y from front to back, z upwards. Inches. */
export interface SolidBlock {
  x: Span;
  y: Span;
  z: Span;
}

/** A block of a part where it stands in the finished piece, less what is cut out of it. */
export interface Solid extends SolidBlock {
  part: string;
  /** Grooves, dadoes, mortises and sockets. */
  cuts?: SolidBlock[];
}

/** The views of a drawing: from above, from the front, from the right. */
export type ViewName = 'plan' | 'front' | 'right side';

/** A size shown in one view, along the side it stands at; inches from the left or lower corner of the whole piece. */
export interface DrawnSize {
  view: ViewName;
  side: 'left' | 'right' | 'above' | 'below';
  from: number;
  to: number;
  /** Said before the size: `inside`. */
  what: string;
}

/** All that the drawings of a piece need, whatever it is. */
export interface DrawnPiece {
  /** As the captions call it: `the bookcase`. */
  name: string;
  solids: Solid[];
  /** The blocks as they look taken apart, where they differ. */
  looseSolids?: Solid[];
  /** Sizes besides those over everything. */
  sizes: DrawnSize[];
  /** Outlines of what is cut open, where a view shows it: across and up in that view. */
  openings?: { view: ViewName; across: Span; up: Span }[];
  /** Which way each part moves when the piece is taken apart, in shares of its size; parts not named stay. */
  apart: Record<string, readonly [x: number, y: number, z: number]>;
  /** How it goes together, a sentence or two. */
  assembly: string;
}

/** Over all of its blocks. @internal */
export function extent(solids: readonly SolidBlock[]): SolidBlock {
  const span = (axis: 'x' | 'y' | 'z'): Span => [
    Math.min(...solids.map((solid) => solid[axis][0])),
    Math.max(...solids.map((solid) => solid[axis][1])),
  ];
  return { x: span('x'), y: span('y'), z: span('z') };
}
