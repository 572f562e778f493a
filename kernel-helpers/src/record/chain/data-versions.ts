import { createHash } from 'node:crypto';
import cautions from '../../../../data/cautions.json';
import climates from '../../../../data/climates.json';
import finishes from '../../../../data/finishes.json';
import glues from '../../../../data/glues.json';
import grits from '../../../../data/grits.json';
import vapour from '../../../../data/house-vapour.json';
import lumber from '../../../../data/lumber.json';
import excluding from '../../../../data/moisture-excluding.json';
import service from '../../../../data/moisture-in-service.json';
import operations from '../../../../data/operations.json';
import species from '../../../../data/species.json';

const files = {
  cautions,
  climates,
  finishes,
  glues,
  grits,
  'house-vapour': vapour,
  lumber,
  'moisture-excluding': excluding,
  'moisture-in-service': service,
  operations,
  species,
};

/** Digest of each data file's values, by its name under data/: says which figures a decision was made with. @internal */
export function dataVersions(): Record<string, string> {
  const digest = (data: unknown) => createHash('sha256').update(JSON.stringify(data)).digest('hex').slice(0, 16);
  return Object.fromEntries(Object.entries(files).map(([name, data]) => [`${name}.json`, digest(data)]));
}
