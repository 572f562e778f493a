import { expect, it } from 'vitest';
import { cornerPieces, readFirstBoards } from '../../kernel-helpers/src/joints/corner.js';
import { layOutDovetails } from '../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../kernel-helpers/src/joints/finger-joint.js';

it('a socket is as wide at either face of the pin board as the tail that passes through it there', () => {
  // 1:8 on 5/8 in stock, 1/8 in proud: a tail is narrower by 1/64 in a side 1/8 in from its end, by 3/32 in at the baseline.
  const layout = layOutDovetails({
    boardWidth: 4.5,
    stockThickness: 5 / 8,
    proud: 1 / 8,
    slope: '1:8',
    tails: 3,
    pinWidth: 0.25,
    halfPin: 0.25,
  });
  const { sockets } = cornerPieces(layout);
  expect(sockets).toHaveLength(3);
  for (const [i, tail] of layout.tails.entries()) {
    expect(sockets[i]?.from).toBeCloseTo(tail.from + 1 / 64, 12);
    expect(sockets[i]?.to).toBeCloseTo(tail.to - 1 / 64, 12);
    expect(sockets[i]?.baselineFrom).toBeCloseTo(tail.from + 3 / 32, 12);
    expect(sockets[i]?.baselineTo).toBeCloseTo(tail.to - 3 / 32, 12);
  }
});

it('a socket for a finger is the finger, on both faces', () => {
  const { first, sockets } = cornerPieces(layOutFingers({ boardWidth: 4, stockThickness: 0.5, fingers: 5 }));
  expect(sockets).toEqual(first);
});

it('boards that carry the tails are asked for in words, and other words are refused', () => {
  expect(readFirstBoards('sides')).toBe('sides');
  expect(() => readFirstBoards('front')).toThrow(/firstBoards: "front" given; possible: front and back, sides/);
});
