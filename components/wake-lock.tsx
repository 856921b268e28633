'use client';
import { useEffect, useState } from 'react';

/** Keeps the screen on while it is shown, and says whether the browser does so. Asked for again when the page comes back. */
export function WakeLock() {
  const [kept, setKept] = useState<boolean | null>(null);
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let gone = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      try {
        lock = (await navigator.wakeLock?.request('screen')) ?? null;
        if (gone) await lock?.release();
        else setKept(lock !== null);
      } catch {
        setKept(false);
      }
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      gone = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, []);
  if (kept === null) return null;
  return (
    <p className="quiet">{kept ? 'The screen stays on.' : 'This browser lets the screen go dark; timers go on.'}</p>
  );
}
