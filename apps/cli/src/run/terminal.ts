/** Where words go: results to `out`, everything else to `say` (standard error). */
export interface Terminal {
  out(text: string): void;
  say(line: string): void;
  /** One line that is written over; null clears it. */
  status(line: string | null): void;
  readonly sayIsTty: boolean;
}

export function processTerminal(): Terminal {
  const sayIsTty = process.stderr.isTTY === true;
  const width = (): number => process.stderr.columns ?? 80;
  let shown = false;
  const clear = (): void => {
    if (shown) process.stderr.write('\r\u001b[K');
    shown = false;
  };
  return {
    sayIsTty,
    out: (text) => process.stdout.write(text),
    say(line) {
      clear();
      process.stderr.write(`${line}\n`);
    },
    status(line) {
      clear();
      if (line === null) return;
      process.stderr.write(line.slice(0, width() - 1));
      shown = true;
    },
  };
}
