'use client';
import { useEffect, useState } from 'react';
import { timerText } from './timer-text.ts';

export type RunningTimeProps = {
  /** Instant it counts up from, or down to, in milliseconds since 1970. */
  since?: number;
  until?: number;
  label: string;
};

/** A clock in a line of text: time gone by, or time left and then time over. */
export function RunningTime({ since, until, label }: RunningTimeProps) {
  const [now, setNow] = useState<number | null>(null);
  useEffect(() => {
    const look = () => setNow(Date.now());
    look();
    const every = setInterval(look, 500);
    return () => clearInterval(every);
  }, []);
  return (
    <span role="timer" aria-label={label}>
      {now === null ? '–:––' : textAt(now, since, until)}
    </span>
  );
}

function textAt(now: number, since?: number, until?: number): string {
  if (since !== undefined) return timerText(now - since);
  if (until === undefined) return '';
  return now >= until ? `+${timerText(now - until)}` : timerText(until - now);
}
