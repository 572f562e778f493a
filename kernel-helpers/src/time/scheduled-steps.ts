import type { Finding } from '../measure/finding.js';

/** A step with its days. All days are ISO days. */
export interface ScheduledStep {
  id: string;
  name: string;
  count: string;
  /** Hours as they are expected. */
  hours: number;
  start: string;
  finish: string;
  /** What passes afterwards, and the day on which it is over. */
  wait?: { what: string; until: string };
  /** On the chain of steps that decides the finish. */
  critical: boolean;
  cautions: string[];
}

/** When what is done, and whether the promise can be kept. All days are ISO days. */
export interface Schedule {
  start: string;
  promised: string;
  /** In working order. */
  steps: ScheduledStep[];
  /** When everything takes as long as expected. */
  finish: string;
  /** Last day to begin and still be done in time when everything takes as long as expected; none when it is past. */
  latestStart?: string;
  /** Ids of the steps that decide the finish, first to last: each waits for the one before, or for the hands that were at it. */
  criticalPath: string[];
  /** Of all simulated pieces, the share that is done on or before the promised day. */
  odds: number;
  pace: number;
  /** Days by which half, eight in ten and nineteen in twenty are done. */
  ready: { p50: string; p80: string; p95: string };
  /** Each day on which some piece is done, and the share done by then. */
  readyBy: { day: string; share: number }[];
  simulations: number;
  seed: number;
  findings: Finding[];
}
