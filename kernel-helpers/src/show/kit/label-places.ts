/**
 * Moves labels apart along a line, as little as it takes, so that none covers another.
 *
 * @param wanted  where each label's middle should stand, pixels
 * @param gap  least distance between two middles
 * @param from, to  the labels stay between these, where there is room
 * @returns where each stands, in the order given
 */
export function spreadApart(wanted: readonly number[], gap: number, from: number, to: number): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] as number) - (wanted[b] as number) || a - b);
  const places = [...wanted];
  let last = from - gap;
  for (const i of order) {
    last = Math.max(wanted[i] as number, last + gap);
    places[i] = last;
  }
  let next = Math.max(to, from + gap * (wanted.length - 1)) + gap;
  for (const i of order.reverse()) {
    next = Math.min(places[i] as number, next - gap);
    places[i] = next;
  }
  return places;
}
