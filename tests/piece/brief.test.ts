import { describe, expect, it } from 'vitest';
import { sizeBookcase } from '../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { sizedBox } from '../../kernel-helpers/src/piece/box/sized-box.js';
import { briefSchema, readBrief } from '../../kernel-helpers/src/piece/brief.js';

const asked = {
  client: 'S. Sample',
  piece: 'Bookcase',
  promised: '2027-03-19',
  species: 'cherry-black',
  personal: 'plain',
  home: 'chicago-ohare',
  units: 'both',
};
const inside = { insideLength: '9 1/2 in', insideWidth: '6 1/4 in', insideDepth: '4 in', joint: 'through dovetail' };

describe('a brief', () => {
  it('of a box has its inside sizes, of another piece none', () => {
    expect(readBrief({ ...asked, ...inside })).toMatchObject({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4 });
    expect(readBrief(asked)).toEqual(asked);
  });

  it('forgives capitals and spaces in a wood and a place, and keeps both as the lists write them', () => {
    expect(readBrief({ ...asked, species: 'Cherry-Black ', home: ' Chicago-OHare' })).toEqual(asked);
    expect(() => readBrief({ ...asked, species: 'chery' })).toThrow('species: "chery" given; nearest: cherry-black');
    expect(() => readBrief({ ...asked, home: 'qqqqqq' })).toThrow('home: "qqqqqq" given; none is near it; possible: ');
  });

  it('takes wood and place by the names one says them by', () => {
    expect(readBrief({ ...asked, species: 'cherry', home: 'Chicago, Illinois' })).toEqual(asked);
    expect(readBrief({ ...asked, species: 'white oak', home: 'Denver' })).toMatchObject({
      species: 'oak-white',
      home: 'boulder',
    });
    expect(() => readBrief({ ...asked, species: 'soft maple' })).toThrow(
      'species: "soft maple" given; which of them: red maple, silver maple, bigleaf maple (the wood, such as walnut)',
    );
    expect(() => readBrief({ ...asked, home: 'Boston' })).toThrow('home: "Boston" given; nearest: New York');
  });

  it("takes a place of the maker's own, which is kept in the record whole", () => {
    const ownPlace = { like: 'Boulder', altitude: '10,150 ft' };
    const brief = readBrief({ ...asked, home: 'Leadville', ownPlace });
    expect(brief.home).toMatchObject({ place: 'Leadville', id: 'own-place' });
    expect(briefSchema.safeParse(JSON.parse(JSON.stringify(brief))).success).toBe(true);
    expect(readBrief({ ...asked, ownPlace: '' })).toEqual(asked);
    expect(() => readBrief({ ...asked, ownPlace: { altitude: '3 m' } })).toThrow(
      'ownPlace, temperature: nothing given',
    );
  });

  it('names all that is still open, in one line', () => {
    expect(() => readBrief({ ...asked, ...inside, client: '', promised: ' ', insideDepth: '' })).toThrow(
      'The brief is not whole yet; still to be filled in among its parameters: client, promised, insideDepth',
    );
  });

  it('promises no day before the commission was begun', () => {
    const promised = (begun?: string) => readBrief(asked, begun === undefined ? {} : { begun }).promised;
    expect([promised(), promised(''), promised('2027-03-19')]).toEqual(Array(3).fill('2027-03-19'));
    expect(() => promised('2027-03-20')).toThrow(
      'promised: 2027-03-19 given; possible: 2027-03-20, the day this commission was begun, or later',
    );
  });

  it.each<[object, string]>([
    [{ ...inside, insideDepth: undefined }, 'insideDepth: nothing given; possible: 1/2 in to 18 in'],
    [{ insideWidth: '6 in' }, 'insideLength: nothing given; possible: 1 in to 36 in'],
    [{ species: 'mahagoni' }, 'species: "mahagoni" given;'],
    [{ promised: 'Friday' }, 'promised: "Friday" given; possible: a day that exists'],
    [{ width: '30 in' }, 'width: there is no such parameter'],
  ])('with %j is refused in one line', (given, message) => {
    expect(() => readBrief({ ...asked, ...given } as never)).toThrow(message);
  });
});

describe('a sheet that only a box has', () => {
  it('takes a box as it was sized and refuses another piece by name', () => {
    const box = sizeBox({ insideLength: 9, insideWidth: 6, insideDepth: 4, species: 'walnut-black' });
    expect(sizedBox(box)).toBe(box);
    const bookcase = sizeBookcase({ species: 'cherry-black', width: 30, height: 48, depth: 11, shelves: 3 });
    expect(() => sizedBox(bookcase)).toThrow('This sheet is for a box, and the piece is sized as bookcase');
  });
});
