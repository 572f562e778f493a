import { describe, expect, it } from 'vitest';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { allClimates, climate } from '../../../kernel-helpers/src/wood/place/climates.js';
import { standsFor } from '../../../kernel-helpers/src/wood/place/places.js';
import { regionCalled, regionName } from '../../../kernel-helpers/src/wood/place/regions.js';

describe('a place called by its ordinary name', () => {
  it.each([
    ['Chicago', 'chicago-ohare'],
    ['chicago, il', 'chicago-ohare'],
    ['Chicago Illinois', 'chicago-ohare'],
    ['Portland', 'portland-or'],
    ['Portland, OR', 'portland-or'],
    ['New York', 'new-york-central-park'],
    ['Saint Paul, MN', 'minneapolis'],
    ['Tokyo', 'tokyo-hyakuri'],
    ['London', 'london'],
    ['chicago-ohare', 'chicago-ohare'],
  ])('%s is in the list as %s', (name, id) => {
    expect(climate(name).id).toBe(id);
    expect(standsFor(name, climate(name))).toBeUndefined();
  });

  it('of a town near one of the list, and about as high, is that one, and says so', () => {
    expect(climate('Denver').id).toBe('boulder');
    expect(standsFor('Denver', climate('Denver'))).toBe('24 mi away');
    expect(climate('Fort Collins, Colorado').id).toBe('boulder');
    expect(standsFor('Oxford, UK', climate('Oxford, UK'))).toMatch(/^\d\d mi away$/);
    expect(yearOfAir({ place: 'Denver' })).toEqual(yearOfAir({ place: 'boulder' }));
  });

  it('of a town far from all of them, or much higher, names the nearest and how to go on', () => {
    expect(() => climate('Portland, ME')).toThrow(
      'no figures for Portland, Maine; nearest: New York (Central Park) (275 mi away); Chicago',
    );
    expect(() => climate('Leadville')).toThrow('Boulder, Colorado (77 mi away, 4,800 ft lower)');
    expect(() => climate('Paris')).toThrow('London (Heathrow area) (354 km away)');
    expect(() => climate('Boston')).toThrow('or give its own twelve months');
  });

  it('of several towns asks which of them', () => {
    expect(() => climate('Springfield')).toThrow('which of them: Springfield, Missouri; Springfield, Massachusetts;');
    expect(() => climate('Springfield, IL')).toThrow('no figures for Springfield, Illinois');
  });

  it('of a whole state asks for a town', () => {
    expect(() => climate('Colorado')).toThrow('possible: a town in Colorado, or take Boulder, Colorado');
    expect(() => climate('KS')).toThrow('possible: a town in Kansas');
  });

  it('is named when it is written nearly right', () => {
    expect(() => climate('Lodnon')).toThrow('"Lodnon" is not in the list; nearest: London (Heathrow area)');
    expect(() => climate('chicago-ohar')).toThrow('nearest: Chicago');
    expect(() => climate('Bostn')).toThrow('nearest: Boston, Massachusetts');
    for (const nothing of ['Erewhon', '', ',', '  ', '12'])
      expect(() => climate(nothing)).toThrow('possible: a larger town');
  });

  it('is found for every place of the list, by the name it has there', () => {
    for (const { id, place } of allClimates()) expect(climate(place).id, place).toBe(id);
  });
});

describe('a region', () => {
  it.each([
    ['Colorado', 'US-CO', 'Colorado'],
    ['co', 'US-CO', 'Colorado'],
    ['D.C.', 'US-DC', 'District of Columbia'],
    ['UK', 'GB', 'United Kingdom'],
    ['Sweden', 'SE', 'Sweden'],
    ['Ontario', 'CA-ON', 'Ontario'],
  ])('%s is %s', (typed, id, name) => {
    expect(regionCalled(typed)).toBe(id);
    expect(regionName(id)).toBe(name);
  });

  it('is none where it is a word like any other', () => {
    for (const word of ['', 'box', 'Denver', 'ZZZ']) expect(regionCalled(word)).toBeUndefined();
  });
});
