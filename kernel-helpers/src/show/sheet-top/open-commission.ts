import { type OpenedCommission, openCommission as openIn } from '../../record/open-commission.js';
import { withUsesKept } from '../../record/uses/kept-uses.js';
import { place } from '../kit/display.js';
import { sheetTop } from './sheet-top.js';

/**
 * Opens the commission that a sheet stands in, as {@link openIn} says, and keeps a place under the cell that opens it for what
 * the sheet decides: one sentence, and what moved since it was run before.
 *
 * @param given.folder  the commission's folder; where the sheet stands when left out
 * @param given.notify  where its notices go, a line each; printed when left out
 * @throws ShopError  when there is no such folder, or its own woods cannot be read
 */
export function openCommission(given: { folder?: string; notify?: (line: string) => void } = {}): OpenedCommission {
  const fill = place();
  return withUsesKept(openIn({ ...given, board: (top) => fill(sheetTop(top)) }));
}
