import styles from './pan-strip.module.css';
import { RunningTime } from './running-time.tsx';
import type { PanShown } from './stove-shown.ts';

const PHASE: Record<PanShown['phase'], string> = {
  heat: 'heating',
  boil: 'boiling',
  fill: 'to be filled',
  canner: 'to the canner',
  processing: 'in the canner',
  done: 'done',
};

/** The other pans and loads that are on, each with its clock; a tap goes to it. */
export function PanStrip({ pans, renderedAt }: { pans: readonly PanShown[]; renderedAt: number }) {
  if (pans.length === 0) return null;
  return (
    <nav className={styles.strip} aria-label="The other pans">
      {pans.map((p) => (
        <a key={p.code} href={`/batches/${encodeURIComponent(p.code)}/stove`} className={styles.pan}>
          <b>{p.code}</b>
          <span>
            {PHASE[p.phase]} <PanTime pan={p} renderedAt={renderedAt} />
          </span>
        </a>
      ))}
    </nav>
  );
}

const HALF_DAY_MS = 12 * 3_600_000;

/** Nothing for a clock that nobody stopped half a day ago: it says nothing any more. */
function PanTime({ pan, renderedAt }: { pan: PanShown; renderedAt: number }) {
  if (Math.max(pan.boiledMs ?? 0, -(pan.endsInMs ?? 0)) > HALF_DAY_MS) return null;
  if (pan.endsInMs !== null)
    return (
      <>
        <RunningTime label={`${pan.code}, left`} until={renderedAt + pan.endsInMs} /> left
      </>
    );
  if (pan.phase === 'boil' && pan.boiledMs !== null)
    return <RunningTime label={`${pan.code}, boiling for`} since={renderedAt - pan.boiledMs} />;
  return null;
}
