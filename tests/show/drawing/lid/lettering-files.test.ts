import DxfParser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { typeface } from '../../../../kernel-helpers/src/record/own/typeface-file.js';
import { letteringDxf, letteringSvg } from '../../../../kernel-helpers/src/show/drawing/lid/lettering-files.js';
import { letteringPreview } from '../../../../kernel-helpers/src/show/drawing/lid/lettering-preview.js';
import { lidDrawing } from '../../../../kernel-helpers/src/show/drawing/lid/lid-drawing.js';
import { lidSection } from '../../../../kernel-helpers/src/show/drawing/lid/lid-section.js';
import { lidPlaces } from '../../../../kernel-helpers/src/show/tables/lid-places.js';
import { layOutHandle } from '../../../../kernel-helpers/src/surface/handle/handle.js';
import { layOutLettering } from '../../../../kernel-helpers/src/surface/lettering/lettering.js';
import { chest } from '../../../surface/lettering/shapes.js';

const lettering = layOutLettering({
  box: chest,
  face: typeface('plain'),
  text: 'TEA 80',
  height: '1 in',
  depthLimit: '1/32 in',
});
const handle = layOutHandle({ box: chest, kind: 'scoop', lettering });

describe('the drawing for exchange', () => {
  const parsed = new DxfParser().parseSync(letteringDxf(lettering));
  const on = (layer: string) =>
    (parsed?.entities ?? []).filter((entity) => entity.layer === layer) as unknown as {
      shape?: boolean;
      vertices: { x: number; y: number; z: number }[];
    }[];

  test('is in inches', () => {
    expect(parsed?.header.$INSUNITS).toBe(1);
  });

  test('holds every closed line of the letters: T, E, two of A, three of 8, two of 0', () => {
    expect(on('LETTERS')).toHaveLength(1 + 1 + 2 + 3 + 2);
    expect(on('LETTERS').every(({ shape }) => shape)).toBe(true);
  });

  test('lies where the lettering lies on the lid, from the middle line and the front end', () => {
    const places = on('LETTERS').flatMap(({ vertices }) => vertices);
    expect(Math.min(...places.map(({ x }) => x))).toBeCloseTo(lettering.extent.left - lettering.field.width / 2, 6);
    expect(Math.max(...places.map(({ y }) => y))).toBeCloseTo(lettering.extent.back, 6);
  });

  test('the way of the point goes down to the deepest cut, never deeper, never above the lid', () => {
    const depths = on('CENTRE').flatMap(({ vertices }) => vertices.map(({ z }) => z));
    expect(Math.min(...depths)).toBeCloseTo(-1 / 32, 9);
    expect(Math.max(...depths)).toBeLessThanOrEqual(0);
  });

  test('marks the edge of the flat bottom', () => {
    expect(on('FLOOR').length).toBeGreaterThan(20);
  });
});

test('the drawing to print is full size', () => {
  const svg = letteringSvg(lettering);
  expect(svg).toMatch(/^<svg [^>]*width="6\.1875in" height="10\.0938in" viewBox="0 0 6\.1875 10\.0938"/);
  expect(svg.match(/<polygon /g)).toHaveLength(9);
});

test('a table says where letters and handle lie from the middle line, and where the bit goes', () => {
  const rows = lidPlaces({ lettering, handle }).text.replaceAll('\u00a0', ' ').split('<tr>');
  const cells = (what: string) =>
    rows
      .find((row) => row.includes(what))
      ?.match(/(?<=>)[^<]+(?=<\/td>)/g)
      ?.slice(1);
  // A scoop 1 15/32 in long and 55/64 in wide: the middle of its bit starts and ends half a width inside it.
  expect(cells('lettering')).toEqual(['4 17/32 in', '5 9/16 in', '2 5/16 in left', '2 5/16 in right']);
  expect(cells('>scoop')).toEqual(['1 in', '1 55/64 in', '3/4 in left', '3/4 in right']);
  expect(cells('>middle')).toEqual(['1 7/16 in', '1 7/16 in', '5/16 in left', '5/16 in right']);
});

test('every picture says in words what it shows', () => {
  const options = { lengths: 'mm' } as const;
  expect(letteringPreview(lettering, options).text).toContain('&quot;TEA 80&quot;, 5 letters 25.4 mm high');
  expect(lidDrawing({ lettering, handle }, options).text).toContain('the scoop starts 25.4 mm from the front');
  expect(lidSection({ lettering, handle }, options).text).toContain('Section through the scoop: 6.4 mm left under it.');
});
