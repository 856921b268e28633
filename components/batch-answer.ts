type Answerable = {
  code: string;
  label: string;
  state: string;
  sealState: string | null;
  hoursOut: number | null;
  sheet: { finalG: number | null; jars: number } | null;
  jars: readonly { onHand: number }[];
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
  const now =
    v.state === 'cooking'
      ? v.sheet?.finalG
        ? `cook it to ${(v.sheet.finalG / 1000).toFixed(3)} kg`
        : 'fill it'
      : v.state === 'filled'
        ? 'to the canner'
        : v.state === 'cooling'
          ? (SEAL[v.sealState ?? 'early'] as string)
          : `${v.jars.reduce((n, j) => n + j.onHand, 0)} left of it`;
  return { answer: `${v.label}: ${now}`, sub: `Batch ${v.code}, ${v.kitchen.toLowerCase()}.` };
}
