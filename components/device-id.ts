import { actId } from './act-id.ts';

const KEY = 'stillroom-device';

/** This browser's own name, made once: acts of two devices are told apart by it. */
export function deviceId(): string {
  const known = localStorage.getItem(KEY);
  if (known) return known;
  const made = actId();
  localStorage.setItem(KEY, made);
  return made;
}
