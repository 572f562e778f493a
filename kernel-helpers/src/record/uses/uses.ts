import { sha256 } from '../chain/sha256.js';
import type { Commission } from '../commission.js';
import { signOf } from '../drafts/handed-on.js';
import type { ShopCard } from '../shop-card/shop-card.js';
import type { CommissionStock } from '../shop-stock.js';
import { staleness, standing, standsFor } from '../stale.js';
import type { Store } from '../store/store.js';

/**
 * What a sheet looked at in a run: each thing by its name, with a digest of what it was. `decision sizing` is what that decision
 * hands on, `own lid` a decision of the sheet itself with its papers, `record` the whole record, `drafts` all drafts, `reasons`
 * what stands against a rule of thumb, `shop kerf,planer` fields of the shop card, `stock` the shop's stock, `file room.csv` a
 * file.
 *
 * @internal
 */
export type Uses = Record<string, string>;

/** A commission as far as its sheets look at it. */
type Seen = Pick<Store, 'entries' | 'drafts' | 'has' | 'read' | 'shopCard' | 'stock'>;

const looks: Record<string, (store: Seen, name: string) => unknown> = {
  decision(store, what) {
    const stands = standsFor(what, store.entries(), store.drafts());
    return stands && signOf(stands);
  },
  own(store, what) {
    const [entries, drafts] = [store.entries(), store.drafts()];
    const stands = standsFor(what, entries, drafts);
    if (!stands) return undefined;
    const drafted = !('seq' in stands);
    const papers = (stands.papers ?? []).map((file) => digestOfFile(store, drafted ? `drafts/${file}` : file));
    const behind = staleness(entries, stands, drafted ? drafts : []) !== undefined;
    return [signOf(stands), drafted, behind, papers];
  },
  record: (store) => store.entries().at(-1)?.hash,
  drafts: (store) => store.drafts(),
  reasons(store) {
    const drafts = store.drafts();
    const decided = standing(store.entries()).filter(({ what }) => !drafts.some((draft) => draft.what === what));
    return [...decided, ...drafts].flatMap(({ overrides }) => Object.entries(overrides));
  },
  shop(store, names) {
    const fields = names.split(',') as (keyof ShopCard)[];
    const copy = store.shopCard.copy();
    // The shop's own as well: a sheet says where it has changed since the commission took its copy.
    return [copy, store.shopCard.own() ?? copy].map((card) => card && fields.map((field) => card[field]));
  },
  stock: (store) => store.stock.read(),
  file: digestOfFile,
};

/** A digest of one such thing as it is now. @internal */
export function lookAt(store: Seen, thing: string): string {
  const [kind = '', ...name] = thing.split(' ');
  const look = Object.hasOwn(looks, kind) ? looks[kind] : undefined;
  return sha256(JSON.stringify([look?.(store, name.join(' '))])).slice(0, 16);
}

/** The decisions that a sheet made in a run. @internal */
export function ownDecisions(uses: Uses): string[] {
  return Object.keys(uses).flatMap((thing) => /^own (.+)/.exec(thing)?.[1] ?? []);
}

/** What a sheet calls to look at things, each call noted. @internal */
export function noted(
  job: Commission & { shopStock: CommissionStock },
  store: Seen,
  tell: (uses: Uses) => void,
): Partial<typeof job> {
  const uses: Uses = {};
  const noting = <Given extends unknown[], T>(call: (...given: Given) => T, thing: (...given: Given) => string) =>
    ((...given: Given) => {
      const result = call(...given);
      const name = thing(...given);
      uses[name] = lookAt(store, name);
      tell(uses);
      return result;
    }) as typeof call;
  return {
    need: noting(job.need, (what) => `decision ${what}`) as typeof job.need,
    find: noting(job.find, (what) => `decision ${what}`) as typeof job.find,
    decide: noting(job.decide, (what) => `own ${what}`) as typeof job.decide,
    shop: noting(job.shop, (_, fields) => `shop ${fields.join(',')}`) as typeof job.shop,
    read: noting(job.read, (file) => `file ${file}`),
    entries: noting(job.entries, () => 'record'),
    decisions: noting(job.decisions, () => 'record'),
    head: noting(job.head, () => 'record'),
    drafts: noting(job.drafts, () => 'drafts'),
    reasons: noting(job.reasons, () => 'reasons'),
    shopStock: {
      offered: noting(job.shopStock.offered, () => 'stock'),
      keepOffcuts: noting(job.shopStock.keepOffcuts, () => 'stock'),
    },
  };
}

function digestOfFile(store: Seen, file: string): string | undefined {
  return store.has(file) ? store.read(file).digest : undefined;
}
