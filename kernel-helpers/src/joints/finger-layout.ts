import type { Finding } from '../measure/finding.js';

/** A finger or a socket across the width of a board, from its lower edge. Inches. */
export interface Finger {
  kind: 'finger' | 'socket';
  from: number;
  to: number;
}

/** A finger joint as it is set out. Inches, from the lower edge of the boards. */
export interface FingerLayout {
  boardWidth: number;
  stockThickness: number;
  proud: number;
  /** Fingers of both boards together. */
  count: number;
  fingerWidth: number;
  /** By how much a socket is wider than the finger that goes in, in all. */
  play: number;
  /** The first board has the finger at the lower edge. */
  first: Finger[];
  second: Finger[];
  /** Odd or even, and what follows at the edges. */
  note: string;
  /** Depth of the sockets: thickness plus proud. */
  gaugeSetting: number;
  setUp: {
    /** Height of the cutter over the table. */
    cutterHeight: number;
    /** Between the key and the socket being cut; the key is as wide as a socket. */
    keyDistance: number;
    /** Lower side of the cutter, from the board's lower edge, for each socket. */
    firstBoardFence: number[];
    secondBoardFence: number[];
    /** Passes for one socket, and how far each is moved on. */
    passes: number;
    offsets: number[];
  };
  findings: Finding[];
}
