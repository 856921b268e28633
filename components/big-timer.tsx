'use client';
import { useEffect, useRef, useState } from 'react';
import styles from './big-timer.module.css';
import { timerText } from './timer-text.ts';

export type BigTimerProps = {
  label: string;
  /** The instant it ends, in milliseconds since 1970: a reload, a dark screen or a flat battery changes nothing. */
  endsAt: number;
  /** Minutes of the whole, for the words beneath: "10 min from the table". */
  note?: string;
  /** Sound, vibration and a flash of the screen when the time has come. */
  alarm?: boolean;
};

/** How long after its end a timer still rings and flashes; a page opened later stays quiet. */
const FRESH_MS = 60_000;

/** Counts down to an instant, then says by how much it is over. Digits 56 px and more. */
export function BigTimer({ label, endsAt, note, alarm = true }: BigTimerProps) {
  const [now, setNow] = useState<number | null>(null);
  const rung = useRef(false);
  const over = now !== null && now >= endsAt;

  useEffect(() => {
    const look = () => setNow(Date.now());
    look();
    const every = setInterval(look, 250);
    return () => clearInterval(every);
  }, []);
  useEffect(() => {
    // Rings once for each end; a page opened long after the end stays quiet.
    if (!over || rung.current || !alarm) return;
    rung.current = true;
    if (now !== null && now - endsAt < FRESH_MS) ring();
  }, [over, alarm, now, endsAt]);

  return (
    <div
      className={styles.timer}
      data-over={over || undefined}
      data-flash={(over && alarm && now - endsAt < FRESH_MS) || undefined}
    >
      <span className={styles.label}>{label}</span>
      <span className={styles.digits} role="timer" aria-label={label}>
        {now === null ? '–:––' : over ? `+${timerText(now - endsAt)}` : timerText(endsAt - now)}
      </span>
      <span role="status" className={styles.word}>
        {over ? 'The time has come.' : ''}
      </span>
      {note ? <span className={styles.note}>{note}</span> : null}
    </div>
  );
}

/** Three tones and a long vibration; silent where the browser allows neither. */
function ring() {
  navigator.vibrate?.([400, 200, 400, 200, 800]);
  try {
    const sound = new AudioContext();
    for (const at of [0, 0.6, 1.2]) {
      const tone = sound.createOscillator();
      tone.frequency.value = 880;
      tone.connect(sound.destination);
      tone.start(sound.currentTime + at);
      tone.stop(sound.currentTime + at + 0.35);
    }
    setTimeout(() => void sound.close(), 2500);
  } catch {
    // No sound device: the digits and the words remain.
  }
}
