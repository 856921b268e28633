/** Hours and lanes of the plan board. Minutes count from midnight of the day; 1500 is 01:00 of the next. */
type Timed = { readonly start: number; readonly finish: number };

/** "18:05"; after midnight "01:00 +1". */
export function clock(minutes: number): string {
  const m = Math.round(minutes);
  const inDay = ((m % 1440) + 1440) % 1440;
  const text = `${String(Math.floor(inDay / 60)).padStart(2, '0')}:${String(inDay % 60).padStart(2, '0')}`;
  return m >= 1440 ? `${text} +1` : text;
}

/** First and last full hour around the blocks, and ticks one, two or three hours apart (never more than nine of them). */
export function boardHours(blocks: readonly Timed[]): { from: number; to: number; ticks: number[] } {
  const from = Math.floor(Math.min(...blocks.map((b) => b.start)) / 60) * 60;
  const to = Math.max(from + 60, Math.ceil(Math.max(...blocks.map((b) => b.finish)) / 60) * 60);
  const step = [60, 120, 180, 360].find((s) => (to - from) / s <= 8) ?? 720;
  const ticks: number[] = [];
  for (let m = from; m <= to; m += step) ticks.push(m);
  return { from, to, ticks };
}

/** The blocks that occupy one burner, pan, canner or person, earliest first. */
export function blocksOfTrack<B extends Timed & { readonly trackIds: readonly string[] }>(
  blocks: readonly B[],
  trackId: string,
): B[] {
  return blocks.filter((b) => b.trackIds.includes(trackId)).sort((a, b) => a.start - b.start);
}
