'use client';
import { useRouter } from 'next/navigation';
import { useCallback, useEffect, useState } from 'react';
import { counted } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import { ButtonRow } from './button-row.tsx';
import styles from './plan-search.module.css';
import { ProgressLine } from './progress-line.tsx';

export type SearchReport = {
  id: string;
  state: 'running' | 'done' | 'stopped' | 'failed' | 'unknown';
  seconds: number;
  limit: number;
  found: number;
  gain: number | null;
  keptKg: number | null;
  totalKg: number;
  gap: number | null;
  failed: string | null;
};

export type PlanSearchProps = {
  /** The page's own query: hours, kept batches, recipes left out. */
  query: string;
  job: SearchReport;
  firstSeconds: number;
  /** An earlier search of the same data: seconds it took. Null when there was none. */
  searchedSeconds: number | null;
  /** Nothing does better: no further search is offered. */
  proven: boolean;
};

const EVERY_MS = 1000;
const OTHERS =
  'Now other plans to choose from, and what one more hour, burner, dozen lids or metre of shelf would bring.';
const MORE = [20, 60] as const;

/** Starts, watches, extends and stops the search for better plans. The first one starts by itself; without a script the button does. */
export function PlanSearch({ query, job, firstSeconds, searchedSeconds, proven }: PlanSearchProps) {
  const router = useRouter();
  const [report, setReport] = useState(job);
  const [failed, setFailed] = useState<string | null>(null);
  const running = report.state === 'running';

  const start = useCallback(
    async (seconds: number) => {
      const form = new FormData();
      form.set('query', query);
      form.set('seconds', String(seconds));
      const answer = await fetch('/api/plan', {
        method: 'POST',
        body: form,
        headers: { accept: 'application/json' },
      }).catch(() => null);
      const said = (await answer?.json().catch(() => null)) as (SearchReport & { error?: string }) | null;
      if (answer?.ok && said) setReport(said);
      else setFailed(said?.error ?? 'The search could not be started: no connection.');
    },
    [query],
  );

  useEffect(() => {
    if (job.state === 'unknown' && searchedSeconds === null) void start(firstSeconds);
  }, [job.state, searchedSeconds, start, firstSeconds]);

  useEffect(() => {
    if (!running) return;
    const timer = setInterval(async () => {
      const answer = await fetch(`/api/plan/${report.id}`).catch(() => null);
      const next = answer?.ok ? ((await answer.json()) as SearchReport) : null;
      if (!next) return;
      setReport(next);
      if (next.state !== 'running') router.refresh();
    }, EVERY_MS);
    return () => clearInterval(timer);
  }, [running, report.id, router]);

  const stop = () => void fetch(`/api/plan/${report.id}`, { method: 'DELETE' });
  if (searchedSeconds === null && (report.state === 'done' || report.state === 'stopped'))
    return <p aria-live="polite">A better plan is found; it is being laid out.</p>;
  if (running)
    return (
      <div className={styles.search} aria-live="polite">
        <ProgressLine
          label="Looking for better plans"
          share={report.seconds / Math.max(1, report.limit)}
          text={`${Math.min(report.limit, Math.round(report.seconds))} of ${report.limit} s`}
        />
        <p>{report.seconds > report.limit ? OTHERS : progressText(report)}</p>
        <Button kind="quiet" type="button" onClick={stop}>
          Stop, keep the best so far
        </Button>
      </div>
    );
  const choices = searchedSeconds === null ? [firstSeconds] : MORE;
  return (
    <div className={styles.search} aria-live="polite">
      <p>
        {failed ??
          (report.state === 'failed'
            ? `The search ended without an answer: ${report.failed}. The plain plan stands.`
            : proven
              ? 'No plan does better: that is proven.'
              : searchedSeconds === null
                ? 'Only a plain plan so far.'
                : `Looked for ${counted(searchedSeconds, 'second')}. Longer may find more.`)}
      </p>
      {proven ? null : (
        <form method="post" action="/api/plan">
          <input type="hidden" name="query" value={query} />
          <ButtonRow>
            {choices.map((seconds) => (
              <Button
                key={seconds}
                kind={searchedSeconds === null ? 'primary' : 'quiet'}
                name="seconds"
                value={seconds}
                onClick={(e) => {
                  e.preventDefault();
                  void start(seconds);
                }}
              >
                {searchedSeconds === null ? 'Find better plans' : `${seconds} s more`}
              </Button>
            ))}
          </ButtonRow>
        </form>
      )}
    </div>
  );
}

function progressText(r: SearchReport): string {
  if (r.keptKg === null) return 'Setting up.';
  const gap = r.gap === null ? 'no bound proven yet' : `within ${(r.gap * 100).toFixed(1)} % of the proven bound`;
  const gain = r.gain !== null && r.gain >= 0.05 ? `, worth ${r.gain.toFixed(1)} more than the plain plan` : '';
  return `The best so far keeps ${r.keptKg.toFixed(1)} of ${r.totalKg.toFixed(1)} kg${gain}; ${gap}. ${r.found === 0 ? '' : `${counted(r.found, 'better one')} found.`}`;
}
