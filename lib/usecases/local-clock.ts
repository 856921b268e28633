/** An instant as the place's own clock shows it: "2025-09-13" and "18:00". */
export function localClock(iso: string, timeZone: string): { day: string; time: string } {
  const text = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short', timeStyle: 'short' }).format(
    new Date(iso),
  );
  const [day = '', time = ''] = text.split(' ');
  return { day, time };
}
