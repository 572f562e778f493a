import { formatLength } from '../measure/length.js';
import type { Brief } from '../piece/brief.js';
import { dataVersions } from './chain/data-versions.js';
import { versionsInUse } from './chain/versions.js';
import { type Commission, commissionIn } from './commission.js';
import { commissionFolder } from './commission-folder.js';
import { decisionSchemas } from './decisions/decision-schemas.js';
import type { Decisions } from './decisions/decisions.js';
import { noticesTo } from './notices.js';
import { type Board, decideOnBoard } from './on-board.js';
import { addOwnSpecies, ownSpeciesVersions } from './own/own-species.js';
import { markingPage } from './page-behind.js';
import { type CommissionStock, commissionStock } from './shop-stock.js';

/** The commission that a sheet stands in, which also speaks of lengths as its brief asks. */
export interface OpenedCommission extends Commission {
  /** The shop's stock, from `stock.json` beside the commissions' folder. */
  readonly shopStock: CommissionStock;
  /**
   * A length in the units of the brief, to the nearest 1/64 in or 0.1 mm.
   *
   * @param inches  in
   * @throws ShopError  before the brief is decided
   */
  length(inches: number): string;
}

/**
 * Opens the commission that a sheet stands in.
 *
 * A folder directly inside one named `commissions` is a commission. Any other is practice: everything computes,
 * earlier decisions come from the demonstration commission, and nothing is kept.
 *
 * @param folder  the commission's folder; where the sheet stands when left out
 * @param notify  where its notices go, a line each; printed when left out
 * @param board  the place at the top of the sheet for what its decisions come to; there is none when left out
 * Woods of the maker's own are read from `own-species.json` in data/ and in the commission's folder: a list of entries as in
 * data/species.json.
 *
 * @throws ShopError  when there is no such folder, or its own woods cannot be read
 */
export function openCommission({
  folder = process.cwd(),
  notify = console.log,
  board,
}: {
  folder?: string;
  notify?: (line: string) => void;
  board?: Board;
} = {}): OpenedCommission {
  addOwnSpecies(folder);
  const place = commissionFolder(folder);
  const notices = noticesTo(notify);
  const job = commissionIn<Decisions>({
    ...place,
    notices,
    schemas: decisionSchemas,
    versions: versionsInUse({ ...dataVersions(), ...ownSpeciesVersions(folder) }),
  });
  let brief: Readonly<Brief> | undefined;
  // The runner writes the page itself, when all its sheets have run.
  if (!place.rehearsal && !place.working) job.decide = markingPage(job, place.store);
  if (board && !place.rehearsal) job.decide = decideOnBoard(job, board, { furtherToo: !place.working });
  return Object.assign(job, {
    shopStock: commissionStock({
      // As they are now: what a sheet calls may be noted later.
      job: { name: job.name, entries: job.entries, drafts: job.drafts, need: job.need },
      store: place.store.stock,
      without: place.withoutStock,
      rehearsal: place.rehearsal !== undefined,
      say: notices.say,
    }),
    length(inches: number) {
      brief ??= job.need('brief');
      return formatLength(inches, { system: brief.units, denominator: 64 });
    },
  });
}
