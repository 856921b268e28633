/** "12:05", "1:02:05"; whole seconds, rounded up so that 0:00 means the time has come. */
export function timerText(milliseconds: number): string {
  const s = Math.max(0, Math.ceil(milliseconds / 1000));
  const [h, m, sec] = [Math.floor(s / 3600), Math.floor((s % 3600) / 60), s % 60];
  const two = (n: number) => String(n).padStart(2, '0');
  return h > 0 ? `${h}:${two(m)}:${two(sec)}` : `${m}:${two(sec)}`;
}
