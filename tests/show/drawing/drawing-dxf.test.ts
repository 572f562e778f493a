import DxfParser, { type IEntity, type ILineEntity, type ILwpolylineEntity } from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutDovetails } from '../../../kernel-helpers/src/joints/dovetails.js';
import { grooveRuns } from '../../../kernel-helpers/src/joints/groove-runs.js';
import { sizeBookcase } from '../../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { jointDxf, partsDxf } from '../../../kernel-helpers/src/show/drawing/dxf.js';

/** The file as a reader of another maker understands it. */
function read(text: string) {
  const file = new DxfParser().parseSync(text);
  if (!file) throw new Error('the reader found no drawing');
  const on = (layer: string) => file.entities.filter((entity: IEntity) => entity.layer === layer);
  const areas = (layer: string) =>
    on(layer).map((entity) => {
      const { vertices, shape } = entity as ILwpolylineEntity;
      expect(shape).toBe(true);
      return vertices.map(({ x, y }) => [x, y] as [number, number]);
    });
  return { file, on, areas };
}

const joint = {
  boardWidth: '5 in',
  stockThickness: '5/8 in',
  proud: '1/8 in',
  pinWidth: '1/4 in',
  halfPin: '3/8 in',
  slope: '1:8',
};

describe('a joint as a drawing exchange file', () => {
  it('is full size in inches, with every pin where it was laid out, for any count of tails', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), (tails) => {
        const layout = layOutDovetails({ ...joint, tails });
        const { file, areas, on } = read(jointDxf(layout));
        expect(file.header.$INSUNITS).toBe(1); // inches
        const waste = areas('WASTE');
        expect(waste).toHaveLength(layout.pins.length + tails);
        layout.pins.forEach(({ from, to, baselineFrom, baselineTo }, i) => {
          [from, to, baselineTo, baselineFrom].forEach((x, j) => {
            expect(waste[i]?.[j]?.[0]).toBeCloseTo(x, 6);
          });
          expect((waste[i]?.[0]?.[1] ?? 0) - (waste[i]?.[3]?.[1] ?? 0)).toBeCloseTo(0.75, 6);
        });
        const [baseline] = on('MARKS') as ILineEntity[];
        expect(baseline?.vertices.map(({ x, y }) => [x, y])).toEqual([
          [0, 0.625],
          [5, 0.625],
        ]);
      }),
      { numRuns: 9 },
    );
  });
});

describe('the parts of any piece as a drawing exchange file', () => {
  it('are all there at full size, each kind once', () => {
    const bookcase = sizeBookcase({ species: 'cherry-black', width: 30, height: 48, depth: 11, shelves: 3 });
    const outlines = read(partsDxf(bookcase)).areas('OUTLINE');
    expect(outlines.map((corners) => [corners[1]?.[0], (corners[2]?.[1] ?? 0) - (corners[1]?.[1] ?? 0)])).toEqual(
      bookcase.parts.map(({ length, width }) => [length, width]),
    );
  });
});

describe('the parts of a box as a drawing exchange file', () => {
  const box = sizeBox({
    insideLength: '9 1/2 in',
    insideWidth: '6 1/4 in',
    insideDepth: '4 in',
    species: 'walnut-black',
    proud: '1/8 in',
  });
  const layout = layOutDovetails({ ...joint, boardWidth: box.overall.height, tails: 3, halfPin: '1/2 in' });
  const runs = grooveRuns({ box, joints: { layout, firstBoards: 'front and back' } });
  const { areas, on } = read(partsDxf(box, runs));
  const size = (corners: [number, number][]) => [
    (corners[1]?.[0] ?? 0) - (corners[0]?.[0] ?? 0),
    (corners[2]?.[1] ?? 0) - (corners[1]?.[1] ?? 0),
  ];

  it('holds each part at full size, none over another', () => {
    const outlines = areas('OUTLINE');
    expect(outlines).toHaveLength(box.parts.length);
    box.parts.forEach(({ length, width }, i) => {
      const [across, up] = size(outlines[i] ?? []);
      expect(across).toBeCloseTo(length, 6);
      expect(up).toBeCloseTo(width, 6);
      expect(outlines[i]?.[0]?.[1]).toBeGreaterThan(outlines[i - 1]?.[2]?.[1] ?? -1);
    });
  });

  it('holds the grooves at their height, stopped where they stop, and names each part', () => {
    const [side] = areas('OUTLINE');
    const [bottom] = areas('GROOVES');
    expect((bottom?.[0]?.[1] ?? 0) - (side?.[0]?.[1] ?? 0)).toBeCloseTo(0.25, 6);
    expect(size(bottom ?? [])[1]).toBeCloseTo(13 / 64 + 0.006, 6); // the bottom, and its play
    // The sides carry the pins: stopped 3/4 - 1/4 short of each end.
    expect([bottom?.[0]?.[0], bottom?.[1]?.[0]]).toEqual([0.5, 10.5]);
    expect(read(partsDxf(box)).on('GROOVES')).toEqual([]);
    expect(on('NAMES').map((entity) => (entity as IEntity & { text: string }).text)).toContain(
      '2 x side, 0.625 in thick',
    );
  });

  it('is the same, byte for byte, when it is written again', () => {
    expect(partsDxf(box)).toBe(partsDxf(box));
  });
});
