import { describe, expect, it } from 'vitest';
import { boxGroovePasses } from '../../../kernel-helpers/src/joints/groove-passes.js';
import { grooveRouting } from '../../../kernel-helpers/src/joints/groove-routing.js';
import { grooveRuns } from '../../../kernel-helpers/src/joints/groove-runs.js';
import { benchListPage } from '../../../kernel-helpers/src/show/paper/bench-list.js';
import { benchSettings } from '../../../kernel-helpers/src/show/paper/bench-settings.js';
import { readJointer } from '../../../kernel-helpers/src/stock/milling/hand-fed.js';
import { readPlaner } from '../../../kernel-helpers/src/stock/milling/planer.js';
import { snipeRemedies } from '../../../kernel-helpers/src/stock/milling/snipe.js';
import { box, dovetails, fingers } from '../../money/a-box.js';
import { boxDays } from '../a-schedule.js';
import { dangerous, elementsOf } from '../read-html.js';

const made = boxDays('2027-02-12');
const runs = grooveRuns({ box, joints: { layout: dovetails, firstBoards: 'front and back' } });
const decided = {
  units: 'tape' as const,
  piece: box,
  stock: {
    boards: [{ mark: 'D' }, { mark: 'A' }],
    sheets: [{ mark: 'P' }],
    milled: [],
    planer: readPlaner(),
    jointer: readJointer(),
    snipe: snipeRemedies({ thicknesses: [0.5, 0.5], overLength: 0.75, planer: { snipeLength: 2.5, leastLength: 12 } }),
    toCut: {
      blanks: [
        {
          name: 'blank 1',
          parts: ['side 1', 'front', 'side 2', 'back'],
          length: 41,
          width: 5.25,
          thickness: 0.5,
          because: 'figure' as const,
        },
        { name: 'lid', parts: ['lid'], length: 12, width: 7, thickness: 0.5, because: 'part' as const },
      ],
    },
  },
  joint: { layout: dovetails, firstBoards: 'front and back' },
  grooves: {
    runs,
    routing: grooveRouting({ runs, parts: box.parts, router: { machine: 'router table' } }),
    passes: boxGroovePasses({ box, cutter: '1/8 in', panel: box.design.bottomThickness }),
  },
  lid: { fittedWidth: 6.65625, fittingMoisture: 8, fittedTongue: 0.24 },
  finish: 'shellac-2-coats',
};
const page = benchListPage({ title: 'Tea chest for R. Example', made, settings: benchSettings(decided) });
const items = elementsOf(page, 'main > ol > li');
const textOf = (name: string) =>
  (items.find((item) => item.textContent.includes(name))?.textContent ?? '').replaceAll('\u00a0', ' ');

describe('the bench list', () => {
  it('has every step in working order, with its day and its hours', () => {
    expect(items).toHaveLength(made.steps.length);
    for (const [i, { name, hours }] of made.steps.entries()) {
      expect(items[i]?.textContent).toContain(name);
      expect(items[i]?.textContent).toContain(`${hours.toFixed(1)} h`);
    }
  });

  it('sets up beside the step: sizes, gauge, dividers, passes, the lid', () => {
    expect(textOf('Crosscut and rip rough')).toContain('blank 1 (side 1, front, side 2, back): 41 in');
    expect(textOf('Flatten and thickness')).toContain('planed whole');
    expect(textOf('Rip and crosscut to final size')).toContain('6 23/32 in; planed to 6 21/32 in when it is fitted');
    expect(textOf('Lay out the joint')).toContain('marking gauge 5/8 in');
    // The lid's groove begins where the front is lowered to: 1/4 foot, 13/64 bottom, 4 in clear.
    expect(textOf('Cut the grooves')).toContain(
      'lid, bit of 1/8 in: fence 4 29/64 in, then 4 37/64 in from the near side of the bit; raise it to 1/16 in, then 1/8 in',
    );
    expect(textOf('Rabbet, plane and fit the lid')).toContain('plane the lid to 6 21/32 in at 8 % moisture');
    expect(textOf('Cut the grooves')).toContain('upper edge down to 4 29/64 in from the lower, before glue-up');
    expect(textOf('Rabbet, plane and fit the lid')).toMatch(
      /1\/4 in wide.* until the tongue is 0\.240 in .*raise the cutter to .*0\.260 in \(6\.60 mm\) in a lid still 1\/2 in thick/,
    );
    expect(textOf('coat 1 of 3')).toContain('2 coats');
  });

  it('says grades, glue and coats where a sheet decided them', () => {
    const surface = {
      letters: 7,
      grades: { outside: ['P120', 'P150', 'P180', 'P220'], inside: ['P120', 'P150', 'P180'] },
      glue: { id: 'hide-liquid', assemblyMinutes: 6, clampMinutes: 60, cureHours: 24, millilitres: 9 },
      bitAngle: 90,
      proudAfter: 7 / 64,
      deepest: 0.057,
      handle: 'scoop' as const,
      handleBit: { radius: 0.5, depth: 0.25, passes: 2 },
      finish: {
        id: 'shellac',
        coats: 2,
        inside: false,
        squareFeet: 3.2,
        recoatHours: 4,
        cureDays: 7,
        millilitres: 60,
        oilyRags: false,
      },
    };
    const settings = benchSettings({ ...decided, surface });
    expect(settings.sanding).toContain('P120, then P150, then P180');
    expect(settings['clean-up']?.[0]).toContain('the ends stay about 7/64 in proud');
    expect(settings['sanding-outside']).toContain('P120, then P150, then P180, then P220');
    expect(settings.carving?.[0]).toBe("sand the lid's top first: P120, then P150, then P180");
    expect(settings.carving?.join()).toContain('scoop: round bit of 1 in, 1/4 in deep in 2 passes');
    expect(settings.carving?.join()).toContain('V-bit of 90 degrees, no deeper than 0.057 in');
    expect(settings.carving?.at(-1)).toBe('then P220 by hand, on a block');
    expect(settings['glue-up']?.join()).toMatch(
      /hide.*about 6 needed; 60 minutes in clamps at least; the label comes first/,
    );
    // Where the glue goes is what was chosen: an older record does not say, and then the list does not either.
    expect(settings['glue-up']?.join()).not.toContain('glue on');
    const glued = (on: 'long grain' | 'inner third') =>
      benchSettings({ ...decided, surface: { ...surface, glue: { ...surface.glue, on } } })['glue-up']?.join();
    expect(glued('long grain')).toContain('glue on the sides of tails and pins, where long grain meets long grain');
    expect(glued('inner third')).toContain('glue on the inner third of the sides of tails and pins alone');
    expect(settings['finish-1']?.join()).toMatch(/shellac.*2 coats, about 60 ml in all; 4 hours between coats/i);
  });

  it('says which way each kind of router goes, and how a groove stopped at both ends begins', () => {
    const grooves = (machine: string) =>
      benchSettings({
        ...decided,
        grooves: { ...decided.grooves, routing: grooveRouting({ runs, parts: box.parts, router: { machine } }) },
      }).grooves?.join('; ') ?? '';
    expect(grooves('router table')).toMatch(/raise it to.*from right to left.*start block on the right/);
    expect(grooves('hand router')).toMatch(/lower it to.*from left to right.*plunge/);
    expect(grooves('carving machine')).toMatch(/ramps down/);
    expect(grooves('carving machine')).not.toMatch(/raise it|lower it|right to left|left to right/);
  });

  it('rips a row of short parts while it is whole, and parts it afterwards: none meets the rip fence alone', () => {
    const settings = benchSettings(decided);
    expect(settings['final-size']?.slice(0, 2)).toEqual([
      'rip to width before anything is cut to length',
      'chalk the names again; rip blank 1 whole, then crosscut the parts apart by the numbered cuts',
    ]);
    expect(settings['flatten-and-thickness']?.join()).not.toMatch(/apart|part the/);
  });

  it('says what the jointer does not take, what goes on a carrier board, and what is resawn while it can settle', () => {
    const [row, lid] = decided.stock.toCut.blanks;
    const thin = { ...(lid as NonNullable<typeof lid>), name: 'divider', parts: ['divider'], thickness: 3 / 16 };
    const wide = { ...(row as NonNullable<typeof row>), width: 9 };
    const settings = benchSettings({
      ...decided,
      stock: {
        ...decided.stock,
        toCut: { blanks: [wide, thin] },
        milled: [{ blank: wide }, { blank: thin, resawn: { thickness: 3 / 8, gives: 2 } }],
      },
    });
    const flattening = settings['flatten-and-thickness']?.join('; ');
    expect(flattening).toMatch(/blank 1 .*: wider than the 8 in of the jointer; flatten its face by hand plane/);
    expect(flattening).toContain('divider: 3/16 in thick, planed whole, on a carrier board');
    expect(flattening).not.toMatch(/blank 1[^;]*carrier/);
    expect(settings['rough-cut']?.at(-1)).toMatch(/^divider: .*resaw at the band saw to 3\/8 in .*settled$/);
  });

  it('says which boards, which side is the left one, and how the planer is fed', () => {
    const settings = benchSettings(decided);
    expect(settings['choose-boards']?.[0]).toContain('boards D, A; sheet P');
    expect(settings['choose-boards']).toContain('side 1: left side: seen from outside its front end is at the right');
    expect(settings['choose-boards']).toContain('side 2: right side: seen from outside its front end is at the left');
    expect(settings['flatten-and-thickness']?.join()).toContain('at least 12 in (304.8 mm) long');
    expect(settings['rough-cut']?.at(-1)).toContain('rip at the band saw');
  });

  it('shows the cautions beside each step at a machine, each with its last word', () => {
    for (const [name, caution] of [
      ['Crosscut and rip rough', 'Caution: Band saw'],
      ['Crosscut and rip rough', 'Caution: Mitre saw'],
      ['Flatten and thickness', 'Caution: Jointer'],
      ['Flatten and thickness', 'Caution: Thickness planer'],
      ['Rip and crosscut to final size', 'Caution: Table saw'],
      ['Rip and crosscut to final size', 'Caution: Mitre saw'],
      ['Cut the grooves', 'Caution: Router table'],
      ['Sand the outside faces', 'Caution: Wood dust'],
      ['Glue up and square', 'Caution: Glue-up'],
      ['coat 3 of 3', 'Caution: Oil finish and its rags'],
    ] as const) {
      expect(textOf(name)).toContain(caution);
      expect(textOf(name)).toMatch(/qualified person come first\./);
    }
  });

  it('prints only the cautions that hold for what was chosen: no oily rags with shellac, walnut dust with walnut', () => {
    const list = (species: string, finish: string) =>
      benchListPage({ title: 'Tea chest', made, choices: { species, finish } });
    expect(list('walnut-black', 'shellac')).toContain('Walnut dust irritates');
    expect(list('walnut-black', 'shellac')).not.toMatch(/rags|Oil finish/i);
    expect(list('cherry-black', 'tung-oil')).not.toMatch(/walnut|Shellac, varnish/i);
    expect(list('cherry-black', 'tung-oil')).toContain('Spread every rag');
  });

  it('says what to wait for, and until when', () => {
    expect(textOf('Glue up and square')).toMatch(/Then wait: glue cures, until \w{3} \d+ \w{3}\./);
  });

  it('sets up a finger joint with its cutter and its key', () => {
    const other = benchListPage({
      title: 'Tea chest',
      made: boxDays('2027-02-12', fingers),
      settings: benchSettings({ ...decided, joint: { ...decided.joint, layout: fingers } }),
    });
    expect(other.replaceAll('\u00a0', ' ')).toContain('cutter 5/8 in high');
    expect(other).not.toContain('dividers');
  });

  it("keeps a client's name as plain text, and loads nothing", () => {
    const hostile = '</title><script>alert(1)</script>';
    const taken = benchListPage({ title: hostile, made });
    expect(elementsOf(taken, 'script')).toEqual([]);
    expect(dangerous(taken).filter((found) => found !== '<style>')).toEqual([]);
  });
});
