import { distance } from 'fastest-levenshtein';
import data from '../../../../data/towns.json';
import { ShopError } from '../../measure/shop-error.js';
import { measuresInMiles, regionCalled, regionName } from './regions.js';
import {
  liesIn,
  plain,
  readPlace,
  type Spot,
  type Town,
  type TypedPlace,
  townName,
  townsCalled,
  townsSpeltLike,
} from './towns.js';

/** A place that there are figures for. @internal */
export interface NamedPlace {
  id: string;
  /** `Boulder, Colorado` */
  place: string;
}

/** A place that there are figures for, as it lies from a town. */
export interface NearPlace {
  id: string;
  /** `Boulder, Colorado` */
  place: string;
  kilometres: number;
  /** How much higher it lies, m. */
  higher: number;
  /** The two in words: `24 mi away, 85 ft higher`. */
  words: string;
}

/** Nearer than this, and about as high, a place's air is taken for a town's: common practice, no source. km and m. */
const near = { kilometres: 100, higher: 300 };

type Station = [region: string, latitude: number, longitude: number, altitude: number];
const stations = data.stations as unknown as Record<string, Station>;

/**
 * The place that an ordinary name means: one of the list by its name ("Chicago", "Portland, OR"), or the nearest one to a town
 * ("Denver"), where it lies within 100 km and 300 m of its height.
 *
 * @param typed  as it was typed
 * @param places  those that there are figures for
 * @throws ShopError  a name of several towns; a town with no place near it, with the nearest three; nothing known by this name
 * @internal
 */
export function placeCalled<Place extends NamedPlace>(typed: string, places: readonly Place[]): Place {
  const said = readPlace(typed);
  const named =
    said.map((each) => places.filter((place) => isCalled(place, each))).find(({ length }) => length > 0) ?? [];
  const [only, ...others] = named;
  if (only && others.length === 0) return only;
  if (only)
    throw new ShopError(
      `place: "${typed}" can be several; which of them: ${named.map(({ place }) => place).join(', ')}`,
    );
  const towns = said.map(townsCalled).find(({ length }) => length > 0) ?? [];
  const [town, ...same] = towns;
  if (!town) throw unknownPlace(typed, places);
  if (same.length > 0)
    throw new ShopError(
      `place: "${typed}" is the name of several towns; which of them: ${towns.slice(0, 8).map(townName).join('; ')}`,
    );
  const around = nearestPlaces(town, places);
  const [first] = around;
  if (first && first.kilometres <= near.kilometres && Math.abs(first.higher) <= near.higher)
    return places.find(({ id }) => id === first.id) as Place;
  const three = around.filter(({ kilometres }, i) => i === 0 || (i < 3 && kilometres < 1500));
  const nearest = three.map(({ place, words }) => `${place} (${words})`).join('; ');
  throw new ShopError(
    `place: "${typed}": there are no figures for ${townName(town)}; nearest: ${nearest}; name the one whose year is most like it, or give its own twelve months`,
  );
}

/** The places that there are figures for, the nearest to a town first. @internal */
export function nearestPlaces(town: Town, places: readonly NamedPlace[]): NearPlace[] {
  return places
    .flatMap(({ id, place }) => {
      const at = spotOf(id);
      if (!at) return [];
      const [kilometres, higher] = [distanceBetween(town, at), at.altitude - town.altitude];
      return [{ id, place, kilometres, higher, words: awayInWords(kilometres, higher, measuresInMiles(town.region)) }];
    })
    .sort((a, b) => a.kilometres - b.kilometres);
}

/**
 * How a place stands for a town that was typed: `Boulder, Colorado, 24 mi away, 85 ft higher`; nothing where the place itself
 * was named.
 *
 * @internal
 */
export function standsFor(typed: string, place: NamedPlace): string | undefined {
  const said = readPlace(typed);
  if (place.id === 'own-place' || typed.trim() === place.id || said.some((each) => isCalled(place, each)))
    return undefined;
  const town = said.map(townsCalled).find(({ length }) => length === 1)?.[0];
  return town && nearestPlaces(town, [place])[0]?.words;
}

function isCalled({ id, place }: NamedPlace, { name, region }: TypedPlace): boolean {
  const own = place.split(',')[0] ?? '';
  const words = own.split(/[^\p{L}'.]+/u);
  // Any run of words in its name: "New York", "St. Paul", "O'Hare".
  const runs = words.flatMap((_, from) => words.slice(from).map((_, to) => words.slice(from, from + to + 1).join(' ')));
  const at = spotOf(id);
  return runs.some((run) => run !== '' && plain(run) === plain(name)) && (!at || liesIn(at.region, region));
}

/** Where a place of the list lies; nothing for one that is not there. @internal */
export function spotOf(id: string): Spot | undefined {
  const station = stations[id];
  if (!station) return undefined;
  const [region, latitude, longitude, altitude] = station;
  return { region, latitude, longitude, altitude };
}

/** Along a great circle, km. */
function distanceBetween(a: Spot, b: Spot): number {
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  const [north, east] = [radians(b.latitude - a.latitude), radians(b.longitude - a.longitude)];
  const chord =
    Math.sin(north / 2) ** 2 + Math.cos(radians(a.latitude)) * Math.cos(radians(b.latitude)) * Math.sin(east / 2) ** 2;
  return 2 * 6371 * Math.asin(Math.sqrt(chord));
}

function awayInWords(kilometres: number, higher: number, miles: boolean): string {
  const round = (value: number, step: number) => (Math.round(value / step) * step).toLocaleString('en-US');
  const away = miles ? `${round(kilometres / 1.609344, 1)} mi` : `${round(kilometres, 1)} km`;
  const up = miles ? `${round(Math.abs(higher) / 0.3048, 100)} ft` : `${round(Math.abs(higher), 10)} m`;
  // What is less changes no year of air that anybody could tell.
  return `${away} away${Math.abs(higher) < 150 ? '' : `, ${up} ${higher > 0 ? 'higher' : 'lower'}`}`;
}

function unknownPlace(typed: string, places: readonly NamedPlace[]): ShopError {
  const region = regionCalled(typed);
  if (region) {
    const there = places.filter(({ id }) => liesIn(spotOf(id)?.region ?? '', region)).map(({ place }) => place);
    const figures = there.length > 0 ? `, or take ${there.join(' or ')}` : '';
    return new ShopError(`place: "${typed}" is large; possible: a town in ${regionName(region)}${figures}`);
  }
  const said = plain(typed);
  const off = ({ id, place }: NamedPlace) =>
    Math.min(...[id, ...place.split(/[^\p{L}'.]+/u)].filter(Boolean).map((word) => distance(plain(word), said)));
  const slips = said.length > 5 ? 2 : 1;
  const alike = [
    ...places.filter((place) => off(place) <= slips).map(({ place }) => place),
    ...townsSpeltLike(typed, slips).map(townName),
  ].slice(0, 4);
  if (said !== '' && alike.length > 0)
    return new ShopError(`place: "${typed}" is not in the list; nearest: ${alike.join(', ')}`);
  const names = places.map(({ place }) => place.split(',')[0]).join(', ');
  return new ShopError(
    `place: "${typed}" is not in the list; none is near it; possible: a larger town, with its state or country, or one of ${names}`,
  );
}
