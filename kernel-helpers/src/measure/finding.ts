/** How a design rule came out: fine, worth a look, or not to be built like this. */
export type Verdict = 'ok' | 'watch' | 'stop';

/** What a design rule says of a piece. Rules never throw once the input is valid; they return one of these. */
export interface Finding {
  /** The rule in a few words, the same words every time: overrides are keyed by it. */
  rule: string;
  verdict: Verdict;
  /** The figures it rests on, as the bench would write them. */
  figures: string;
  /** Why the rule exists. */
  reason: string;
  /** What to change when it is not `ok`. */
  change?: string;
  /**
   * Of a rule whose `stop` no reason goes past: somebody could be hurt, or the wood, the tool or the room for it is not there.
   * Left out of a rule of thumb, which a reason may go against.
   */
  absolute?: 'unsafe' | 'impossible';
}

/** What is said where no reason goes past a `stop`. @internal */
export const nothingGoesPast = {
  unsafe: 'Somebody could be hurt: no reason goes past this.',
  impossible: 'It cannot be made like this: no reason goes past it.',
};
