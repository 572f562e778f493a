/** What a commission has to say, each line once. @internal */
export interface Notices {
  readonly lines: readonly string[];
  say(line: string): void;
}

/** @param notify  where each line goes besides `lines` @internal */
export function noticesTo(notify: (line: string) => void): Notices {
  const lines: string[] = [];
  return {
    lines,
    say(line) {
      if (lines.includes(line)) return;
      lines.push(line);
      notify(line);
    },
  };
}
