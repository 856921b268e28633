export type OutageAnswerInput = {
  room: string;
  kind: 'freezer' | 'fridge';
  failed: string | null;
  found: string;
  lasted: string | null;
  load: string;
  roomLb: string | null;
  percent: number | null;
  fullness: string | null;
  hours: number;
  until: string | null;
  items: readonly unknown[];
};

/** "Chest freezer, half full or less: about 24 h, so roughly until 02:10 Sun 18 Jan. Keep it shut." */
export function outageAnswer(v: OutageAnswerInput): { answer: string; sub: string } {
  const size = v.fullness ? `, ${v.fullness}` : '';
  const full = v.roomLb === null ? '' : `, of room for ${v.roomLb}: ${v.percent} % full`;
  const when = v.failed
    ? `Failed about ${v.failed}, found ${v.found}, ${v.lasted} later.`
    : `Found ${v.found}; when it failed is not known.`;
  const sub = `By the list ${v.load}${full}. ${when}`;
  if (v.items.length === 0) return { answer: `${v.room}: all of it is decided on`, sub };
  return {
    answer: v.until
      ? `${v.room}${size}: about ${v.hours} h, so roughly until ${v.until}. Keep it shut.`
      : `${v.room}${size}: about ${v.hours} h from when it failed, and nobody knows when. Go by the ice in the packs.`,
    sub,
  };
}
