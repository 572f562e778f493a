import type { KeyFigures } from './told.js';

/** A key figure that does not read as it did. */
export interface MovedFigure {
  /** As in {@link KeyFigure}. */
  name: string;
  /** Nothing where there was none of that name. */
  before?: string;
  now?: string;
}

/** The key figures that read otherwise than before, in the order of the figures now. A difference that nobody reads is none. */
export function movedFigures(before: KeyFigures, now: KeyFigures): MovedFigure[] {
  const names = [...now.figures, ...before.figures].map(({ name }) => name);
  const valueIn = ({ figures }: KeyFigures, name: string) => figures.find((figure) => figure.name === name)?.value;
  return [...new Set(names)]
    .map((name) => ({ name, before: valueIn(before, name), now: valueIn(now, name) }))
    .filter((figure) => figure.before !== figure.now);
}
