type Answerable = {
  code: string;
  label: string;
  state: string;
  sealState: string | null;
  hoursOut: number | null;
  sheet: { finalG: number | null; jars: number } | null;
  jars: readonly { onHand: number }[];
  ph: { wanted: boolean; tooHigh: boolean };
  kitchen: string;
};

const SEAL: Record<string, string> = {
  early: 'cooling: leave the jars until twelve hours are up',
  due: 'check the seals now',
  red: 'check the seals now: twenty hours are past',
  locked: 'nobody checked the seals within 24 hours',
};

/** "25256-DAM-A, Damson jam: cook it to 2.14 kg". */
export function batchAnswer(v: Answerable): { answer: string; sub: string } {
  const now = v.ph.tooHigh ? 'not for the shelf, its pH is too high' : dueNow(v);
  return { answer: `${v.label}: ${now}`, sub: `Batch ${v.code}, ${v.kitchen.toLowerCase()}.` };
}

function dueNow(v: Answerable): string {
  if (v.state === 'cooking') return v.sheet?.finalG ? `cook it to ${(v.sheet.finalG / 1000).toFixed(3)} kg` : 'fill it';
  if (v.state === 'filled') return 'to the canner';
  if (v.state === 'cooling') return SEAL[v.sealState ?? 'early'] as string;
  if (v.state === 'taken back') return 'taken back, nothing of it was cooked';
  return v.ph.wanted
    ? 'read its pH before it may stand on the shelf'
    : `${v.jars.reduce((n, j) => n + j.onHand, 0)} left of it`;
}
