import { expect, it } from 'vitest';
import { readOwnPlace } from '../../../kernel-helpers/src/wood/air/own-place.js';
import { homeWords } from '../../../kernel-helpers/src/wood/place/home-words.js';

it('says the place, and whose figures they are where they are another one’s', () => {
  expect(homeWords('Chicago', 'chicago-ohare')).toBe("Chicago O'Hare, Illinois");
  expect(homeWords('boulder', 'boulder')).toBe('Boulder, Colorado');
  expect(homeWords('Denver', 'boulder')).toBe('Denver, by the figures of Boulder, Colorado (24 mi away)');
  const own = readOwnPlace('Leadville', { like: 'Boulder', altitude: '10,150 ft' });
  expect(homeWords('Leadville', own)).toBe('Leadville');
});
