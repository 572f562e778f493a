import { ShopError } from '../measure/shop-error.js';

/** Something that takes time and may have to wait for others. */
export interface Activity {
  id: string;
  /** In any unit, the same for all; zero or more. */
  duration: number;
  /** Ids of those that must be finished first. */
  after: string[];
}

/** When an activity can begin and must begin, counted from the start, in the unit of the durations. */
export interface ActivityTimes {
  id: string;
  earliestStart: number;
  earliestFinish: number;
  latestStart: number;
  latestFinish: number;
  /** How late it may begin without making the whole late. */
  slack: number;
  critical: boolean;
}

/** A network worked out. */
export interface CriticalPath {
  /** Of the whole. */
  duration: number;
  /** In the order given. */
  times: ActivityTimes[];
  /** Ids of one longest chain, first to last. */
  path: string[];
}

/** Room for rounding when times are compared. */
const rounding = 1e-9;

/**
 * The critical path of a network of activities with hands enough for all that can be done at once: the least time the
 * whole can take.
 *
 * @param activities  in any order
 * @throws ShopError  an id given twice, an id that is not there, a duration below zero, activities that wait for each other
 * @see Kelley and Walker 1959, Critical-path planning and scheduling (from memory)
 */
export function criticalPath(activities: Activity[]): CriticalPath {
  const order = inOrder(activities);
  const earliest = new Map<string, number>();
  const latest = new Map<string, number>();
  const finishOf = ({ id, duration }: Activity) => (earliest.get(id) as number) + duration;
  const byId = new Map(activities.map((activity) => [activity.id, activity]));
  const before = (activity: Activity) => activity.after.map((id) => byId.get(id) as Activity);

  for (const activity of order) earliest.set(activity.id, Math.max(0, ...before(activity).map(finishOf)));
  const duration = Math.max(0, ...order.map(finishOf));
  for (const activity of [...order].reverse()) {
    const finish = latest.get(activity.id) ?? duration;
    latest.set(activity.id, finish);
    for (const { id } of before(activity))
      latest.set(id, Math.min(latest.get(id) ?? duration, finish - activity.duration));
  }

  const times = activities.map((activity) => {
    const latestFinish = latest.get(activity.id) as number;
    const earliestStart = earliest.get(activity.id) as number;
    const slack = latestFinish - finishOf(activity);
    return {
      id: activity.id,
      earliestStart,
      earliestFinish: finishOf(activity),
      latestStart: latestFinish - activity.duration,
      latestFinish,
      slack: Math.abs(slack) < rounding * Math.max(1, duration) ? 0 : slack,
      critical: Math.abs(slack) < rounding * Math.max(1, duration),
    };
  });
  const path: string[] = [];
  let last = order.find((activity) => finishOf(activity) === duration);
  while (last) {
    path.unshift(last.id);
    const start = earliest.get(last.id) as number;
    last = start > 0 ? before(last).find((activity) => finishOf(activity) === start) : undefined;
  }
  return { duration, times, path };
}

/**
 * The activities so that each stands after those it waits for, and else as given.
 *
 * @throws ShopError  as {@link criticalPath}
 * @internal
 */
export function inOrder<A extends Activity>(activities: A[]): A[] {
  const byId = new Map<string, A>();
  for (const activity of activities) {
    const { id, duration } = activity;
    if (byId.has(id)) throw new ShopError(`operations: "${id}" is given twice; each needs an id of its own`);
    if (!(duration >= 0 && duration < Infinity))
      throw new ShopError(`operations: ${id} takes ${duration}; possible: a time of zero or more`);
    byId.set(id, activity);
  }
  const order: A[] = [];
  const done = new Set<string>();
  const open: string[] = [];
  const visit = (id: string, wantedBy: string) => {
    if (done.has(id)) return;
    const activity = byId.get(id);
    if (!activity)
      throw new ShopError(`operations: ${wantedBy} comes after "${id}", which is not there; possible: one of the list`);
    if (open.includes(id)) throw circle([...open.slice(open.indexOf(id)), id]);
    open.push(id);
    for (const before of activity.after) visit(before, id);
    open.pop();
    done.add(id);
    order.push(activity);
  };
  for (const { id } of activities) visit(id, id);
  return order;
}

function circle(ids: string[]): ShopError {
  return new ShopError(`operations: ${ids.join(' after ')}: they wait for each other; take one of these "after" away`);
}
