/** The parts of a country that towns are told apart by, as ISO 3166-2 writes them, by their names. */
const parts: Record<string, string> = {
  ...named(
    'US',
    'AL Alabama, AK Alaska, AZ Arizona, AR Arkansas, CA California, CO Colorado, CT Connecticut, DE Delaware, DC District of Columbia, FL Florida, GA Georgia, HI Hawaii, ID Idaho, IL Illinois, IN Indiana, IA Iowa, KS Kansas, KY Kentucky, LA Louisiana, ME Maine, MD Maryland, MA Massachusetts, MI Michigan, MN Minnesota, MS Mississippi, MO Missouri, MT Montana, NE Nebraska, NV Nevada, NH New Hampshire, NJ New Jersey, NM New Mexico, NY New York, NC North Carolina, ND North Dakota, OH Ohio, OK Oklahoma, OR Oregon, PA Pennsylvania, RI Rhode Island, SC South Carolina, SD South Dakota, TN Tennessee, TX Texas, UT Utah, VT Vermont, VA Virginia, WA Washington, WV West Virginia, WI Wisconsin, WY Wyoming',
  ),
  ...named(
    'CA',
    'AB Alberta, BC British Columbia, MB Manitoba, NB New Brunswick, NL Newfoundland and Labrador, NS Nova Scotia, NT Northwest Territories, NU Nunavut, ON Ontario, PE Prince Edward Island, QC Quebec, SK Saskatchewan, YT Yukon',
  ),
};

/** What else a country is called. */
const countries: Record<string, string> = { usa: 'US', us: 'US', uk: 'GB', england: 'GB', scotland: 'GB', wales: 'GB' };

const countryNames = new Intl.DisplayNames(['en'], { type: 'region' });

/**
 * The region that a name or an abbreviation means: a state of the US, a province of Canada, or a country.
 *
 * @param typed  such as `Colorado`, `CO`, `Sweden`
 * @returns as ISO 3166 writes it, such as `US-CO` or `SE`; undefined where it is none
 * @internal
 */
export function regionCalled(typed: string): string | undefined {
  const said = typed.trim().toLowerCase().replace(/\./g, '');
  const part = Object.keys(parts).find((id) => id.slice(3).toLowerCase() === said || parts[id]?.toLowerCase() === said);
  return part ?? countries[said] ?? countryIds().find((id) => countryNames.of(id)?.toLowerCase() === said);
}

/** A region's name: `Colorado` for `US-CO`, `Sweden` for `SE`. @internal */
export function regionName(id: string): string {
  return parts[id] ?? countryNames.of(id) ?? id;
}

/** Whether a town there is told its distances in miles and feet. @internal */
export function measuresInMiles(region: string): boolean {
  return region.startsWith('US-') || region === 'GB';
}

function named(country: string, list: string): Record<string, string> {
  return Object.fromEntries(list.split(', ').map((each) => [`${country}-${each.slice(0, 2)}`, each.slice(3)]));
}

function countryIds(): string[] {
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
  return letters.flatMap((first) => letters.map((second) => first + second));
}
