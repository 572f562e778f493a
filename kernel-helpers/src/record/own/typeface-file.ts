import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { ShopError } from '../../measure/shop-error.js';
import { readTypeface, type Typeface } from '../../surface/lettering/typeface.js';

/** Faces that come with the daybook, each an open font (SIL Open Font License 1.1) out of its own package. */
const files = {
  roman: '@fontsource/marcellus/files/marcellus-latin-400-normal.woff',
  book: '@fontsource/quattrocento/files/quattrocento-latin-400-normal.woff',
  plain: '@fontsource/lato/files/lato-latin-400-normal.woff',
};

/** `roman`: cut capitals of old inscriptions; `book`: serifs of a printed page; `plain`: even strokes without serifs. */
export type TypefaceName = keyof typeof files;

const read = new Map<TypefaceName, Typeface>();

/**
 * A face of letters to cut.
 *
 * @param name  see {@link TypefaceName}
 * @returns outlines as `layOutLettering` takes them; Latin letters with their accents
 * @throws ShopError  a name that is not one of the three; a font whose package is not installed
 */
export function typeface(name: TypefaceName | (string & {})): Typeface {
  if (!Object.hasOwn(files, name))
    throw new ShopError(`face: "${name}" given; possible: ${Object.keys(files).join(', ')} (the style of the letters)`);
  const known = name as TypefaceName;
  let face = read.get(known);
  if (!face) {
    face = readTypeface(readFileSync(fontPath(files[known])));
    read.set(known, face);
  }
  return face;
}

function fontPath(file: string): string {
  try {
    return createRequire(import.meta.url).resolve(file);
  } catch {
    throw new ShopError(`face: the font ${file} is not installed; run npm ci in the daybook's folder`);
  }
}
