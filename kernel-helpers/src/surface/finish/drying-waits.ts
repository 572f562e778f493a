import { finish } from './finishes.js';
import { glue } from './glues.js';

/**
 * Days that glue and finish take by themselves, from their labels' usual figures.
 *
 * @param chosen.glue  id of the glue at the joints
 * @param chosen.finish  id of the finish, or `none`
 * @see data/glues.json, data/finishes.json
 */
export function dryingWaits(chosen: { glue: string; finish: string }): { glue: number; recoat: number; cure: number } {
  const { recoatHours, cureDays } = chosen.finish === 'none' ? { recoatHours: 0, cureDays: 0 } : finish(chosen.finish);
  return { glue: glue(chosen.glue).cureHours / 24, recoat: recoatHours / 24, cure: cureDays };
}
