import { sandingMinutes } from '../../money/sanding-minutes.js';
import { glue } from '../../surface/finish/glues.js';
import type { Gluing } from '../../surface/finish/gluing.js';
import type { SandingPlan } from '../../surface/finish/sanding.js';
import type { DisplayItem } from '../kit/display.js';
import { table } from '../kit/table.js';

/** Grades of grit in order, and where each is used. */
export function sandingTable(sanding: SandingPlan): DisplayItem {
  const { outside, inside, sanded } = sanding;
  const minutes = sandingMinutes(sanded);
  const where = (grade: string) => (inside.some(({ id }) => id === grade) ? 'outside and inside' : 'outside');
  return table({
    columns: ['Grade', { head: 'Grain', unit: 'µm', decimals: 0 }, { head: 'Finer by', decimals: 2 }, 'Where'],
    rows: outside.map(({ id, microns, ratio }) => [id, microns, ratio, where(id)]),
    caption: `Grades in order; about ${minutes.inAll.toFixed(0)} minutes in all, ${minutes.beforeAssembly.toFixed(0)} of them before assembly, as the hours (09) count them before your corrections`,
  });
}

/** Every type of glue against this assembly: whether there is time, and whether it is warm enough. */
export function glueTable({ choices, assemblyMinutes, millilitres }: Gluing): DisplayItem {
  const span = ([least, most]: readonly [number, number]) => (least === most ? `${least}` : `${least} to ${most}`);
  const yes = (is: boolean) => (is ? 'yes' : 'no');
  return table({
    columns: ['Glue', 'Open, minutes', 'Clamps, minutes', 'In time', 'Warm enough', 'Line', 'How sure'],
    rows: choices.map(({ id, type, inTime, warmEnough }) => {
      const { openMinutes, clampMinutes, line, fromMemory } = glue(id);
      const sure = fromMemory ? 'partly from memory' : 'read in print';
      return [type, span(openMinutes), `${clampMinutes}`, yes(inTime), yes(warmEnough), line, sure];
    }),
    caption: `Types against an assembly of ${assemblyMinutes.toFixed(1)} minutes; about ${millilitres.toFixed(0)} ml. The label comes first`,
  });
}
