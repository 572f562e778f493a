import { distance } from 'fastest-levenshtein';
import data from '../../../../data/towns.json';
import { regionCalled, regionName } from './regions.js';

/** A spot on the map. */
export interface Spot {
  /** As ISO 3166 writes it: `US-CO`, `SE`. */
  region: string;
  /** Degrees, north and east. */
  latitude: number;
  longitude: number;
  /** m */
  altitude: number;
}

/** A town of data/towns.json. @internal */
export interface Town extends Spot {
  name: string;
  /** People, in thousands. */
  thousands: number;
}

type Row = [name: string, latitude: number, longitude: number, altitude: number, thousands: number];

/** What was typed for a place: the words of a name, and the region named with it. @internal */
export interface TypedPlace {
  name: string;
  region?: string;
}

/**
 * The ways in which what was typed can be a name and a region: "Denver", "Denver, CO", "Denver Colorado", "St. Paul, Minnesota".
 *
 * @returns the longest name first
 * @internal
 */
export function readPlace(typed: string): TypedPlace[] {
  const [before = '', ...after] = typed.split(',').map((part) => part.trim());
  if (after.length > 0) {
    const region = after.map(regionCalled).find((each) => each !== undefined);
    return region ? [{ name: before, region }] : [];
  }
  const words = before.split(/\s+/);
  const split = words.slice(1).flatMap((_, i) => {
    const region = regionCalled(words.slice(i + 1).join(' '));
    return region ? [{ name: words.slice(0, i + 1).join(' '), region }] : [];
  });
  return [{ name: before }, ...split];
}

/** Whether a region is another or a part of it: Colorado of the US. @internal */
export function liesIn(region: string, wider: string | undefined): boolean {
  return wider === undefined || region === wider || region.startsWith(`${wider}-`);
}

/**
 * The towns of a name, the largest first. Of a name without a region, one that has eight times the people of any other alone.
 *
 * @internal
 */
export function townsCalled({ name, region }: TypedPlace): Town[] {
  const said = plain(name);
  const found = townsWhere((each, where) => plain(each) === said && liesIn(where, region));
  const [largest, next] = found;
  return largest && (!next || largest.thousands >= 8 * next.thousands) ? [largest] : found;
}

/** Towns of 100,000 and more within so many slips of a name, the largest first. @internal */
export function townsSpeltLike(typed: string, slips: number): Town[] {
  const said = plain(typed);
  const large = townsWhere((name) => distance(plain(name), said) <= slips).filter(({ thousands }) => thousands >= 100);
  return said === '' ? [] : large.slice(0, 3);
}

function townsWhere(is: (name: string, region: string) => boolean): Town[] {
  return Object.entries(data.towns as unknown as Record<string, Row[]>)
    .flatMap(([region, rows]) => rows.filter(([name]) => is(name, region)).map((row) => townOf(region, row)))
    .sort((a, b) => b.thousands - a.thousands);
}

/** A town as one writes it on a letter: `Denver, Colorado`. @internal */
export function townName({ name, region }: Town): string {
  return `${name}, ${regionName(region)}`;
}

/** Letters alone, so that "St. Paul" and "Saint Paul", "Zürich" and "Zurich" are one. @internal */
export function plain(name: string): string {
  return name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\bst\b\.?/g, 'saint')
    .replace(/[^a-z]/g, '');
}

function townOf(region: string, [name, latitude, longitude, altitude, thousands]: Row): Town {
  return { name, region, latitude, longitude, altitude, thousands };
}
