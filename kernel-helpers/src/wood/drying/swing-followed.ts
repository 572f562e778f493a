import { ShopError } from '../../measure/shop-error.js';
import type { MonthOfAir } from '../air/air.js';
import { dailyAir } from '../air/daily-air.js';
import { moistureByHumidity } from '../emc.js';
import { putInAir } from './board-in-air.js';
import { diffusivityDoubt } from './diffusivity.js';
import { airBetween, type DryingBoard, type MoistureOnDay, readBoard } from './drying.js';

/** A day of the year with its moisture, %. */
export interface DayOfYear {
  /** 1 is 1 January. */
  day: number;
  moisture: number;
}

/** How a board follows the year's swing of its air, once it has been there for years. */
export interface SwingFollowed {
  /** Part of the swing that reaches the board, driest to wettest day; 1 is all of it. */
  followed: number;
  /** The same with half and with twice the diffusivity: what is known of it. */
  followedLow: number;
  followedHigh: number;
  /** Days by which the board's yearly wave comes after the air's. */
  daysLate: number;
  daysLateLow: number;
  daysLateHigh: number;
  board: { driest: DayOfYear; wettest: DayOfYear };
  /** What wood would have that followed at once. */
  air: { driest: DayOfYear; wettest: DayOfYear };
  /** 365 days from 1 January; `air` is what wood would have that followed at once. */
  days: (MoistureOnDay & { air: number })[];
}

const daysInYear = 365;
/** A year that ends within this of the one before repeats itself, %. */
const repeats = 1e-3;
const mostYears = 100;

/**
 * How much of the year's swing reaches a board of this thickness and finish, and how many days late.
 *
 * The year is drawn smoothly through its twelve months and run until it repeats itself.
 *
 * @param board.air  twelve months, as `yearOfAir` gives them
 * @throws ShopError  one line; a year whose air never changes
 * @see {@link moistureThroughTime}, its doubt taken as a factor of 2 in the diffusivity
 */
export function swingFollowed(board: DryingBoard & { air: MonthOfAir[] }): SwingFollowed {
  const air = dailyAir({ year: board.air });
  const atOnce = air.map(({ day, temperatureC, relativeHumidity }) => ({
    day,
    moisture: moistureByHumidity(temperatureC)(relativeHumidity),
  }));
  const airEnds = ends(atOnce);
  const airSwing = airEnds.wettest.moisture - airEnds.driest.moisture;
  if (airSwing < repeats) throw new ShopError('air: the same the whole year; there is no swing to follow');

  const round = airBetween([...air, { ...(air[0] as (typeof air)[number]), day: daysInYear + 1 }]);
  const start = atOnce.reduce((sum, { moisture }) => sum + moisture, 0) / daysInYear;
  const { diffusionFactor = 1 } = board;
  const follow = (factor: number) => {
    const inAir = readBoard({ ...board, diffusionFactor: diffusionFactor * factor });
    const slab = putInAir(inAir, start, (day) => round(((day - 1) % daysInYear) + 1), 1);
    let days: MoistureOnDay[] = [];
    for (let year = 0; year < mostYears; year++) {
      const before = days[daysInYear - 1]?.mean ?? Number.NaN;
      days = air.map(({ day }) => {
        slab.advance(year * daysInYear + day);
        return { day, mean: slab.mean, surface: slab.face, core: slab.middle };
      });
      if (Math.abs((days[daysInYear - 1] as MoistureOnDay).mean - before) < repeats) break;
    }
    const means = days.map(({ day, mean }) => ({ day, moisture: mean }));
    const { driest, wettest } = ends(means);
    const late = (waveDay(means) - waveDay(atOnce) + 1.5 * daysInYear) % daysInYear;
    return {
      days,
      board: { driest, wettest },
      followed: (wettest.moisture - driest.moisture) / airSwing,
      daysLate: late - daysInYear / 2,
    };
  };
  const [likely, slow, fast] = [follow(1), follow(1 / diffusivityDoubt), follow(diffusivityDoubt)];
  return {
    followed: likely.followed,
    followedLow: slow.followed,
    followedHigh: fast.followed,
    daysLate: likely.daysLate,
    daysLateLow: fast.daysLate,
    daysLateHigh: slow.daysLate,
    board: likely.board,
    air: airEnds,
    days: likely.days.map((day, index) => ({ ...day, air: (atOnce[index] as DayOfYear).moisture })),
  };
}

/**
 * Mean moisture of a board in each month of the year, as the lid's year takes it.
 *
 * @param days  365 days from 1 January, as {@link swingFollowed} gives them; a month is a twelfth of the year
 * @returns twelve months, %
 */
export function moistureByMonth(days: readonly MoistureOnDay[]): { month: number; moisture: number }[] {
  return Array.from({ length: 12 }, (_, before) => {
    const month = before + 1;
    const inMonth = days.filter(({ day }) => Math.ceil((12 * day) / daysInYear) === month);
    return { month, moisture: inMonth.reduce((sum, { mean }) => sum + mean, 0) / inMonth.length };
  });
}

function ends(days: DayOfYear[]): { driest: DayOfYear; wettest: DayOfYear } {
  const byMoisture = [...days].sort((a, b) => a.moisture - b.moisture);
  return { driest: byMoisture[0] as DayOfYear, wettest: byMoisture[byMoisture.length - 1] as DayOfYear };
}

/** Day on which the yearly wave (first harmonic) is highest. */
function waveDay(days: DayOfYear[]): number {
  const turn = (2 * Math.PI) / daysInYear;
  let [across, along] = [0, 0];
  for (const { day, moisture } of days) {
    along += moisture * Math.cos(turn * day);
    across += moisture * Math.sin(turn * day);
  }
  return Math.atan2(across, along) / turn;
}
