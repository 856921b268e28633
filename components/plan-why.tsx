'use client';
import Link from 'next/link';
import { useEffect, useState } from 'react';
import { LinkButton } from './link-button.tsx';
import styles from './plan-view.module.css';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type PlanWhyProps = {
  view: {
    recipe: string;
    stops: readonly string[];
    open: boolean;
    query: string;
    planHref: string;
    backHref: string | null;
  };
};

type Answer = { lines: readonly string[]; href: string | null };

/** What stops a recipe, and what a plan with it would be worth; the latter is worked out while the page is looked at. */
export function PlanWhy({ view }: PlanWhyProps) {
  const { recipe, query, open } = view;
  const [answer, setAnswer] = useState<Answer | null>(null);
  const [failed, setFailed] = useState<string | null>(null);

  useEffect(() => {
    if (!open) return;
    const form = new FormData();
    form.set('query', query);
    form.set('recipe', recipe);
    const stop = new AbortController();
    fetch('/api/plan-why', { method: 'POST', body: form, signal: stop.signal })
      .then(async (r) => {
        const said = (await r.json()) as Answer & { error?: string };
        if (r.ok) setAnswer(said);
        else setFailed(said.error ?? 'It could not be worked out.');
      })
      .catch(() => {
        if (!stop.signal.aborted) setFailed('It could not be worked out: no connection.');
      });
    return () => stop.abort();
  }, [open, query, recipe]);

  return (
    <>
      <TrayTable columns="one">
        {view.stops.length > 0 ? (
          <Tray title="What stops it">
            <ul className={styles.facts}>
              {view.stops.map((s) => (
                <li key={s}>{s}</li>
              ))}
            </ul>
          </Tray>
        ) : null}
        {open ? (
          <Tray title="Planned again with it">
            <div aria-live="polite">
              {answer ? (
                <ul className={styles.facts}>
                  {answer.lines.map((line) => (
                    <li key={line}>{line}</li>
                  ))}
                </ul>
              ) : (
                <p>{failed ?? 'Being worked out: some seconds.'}</p>
              )}
            </div>
            {answer?.href ? <LinkButton href={answer.href}>Plan so</LinkButton> : null}
          </Tray>
        ) : null}
      </TrayTable>
      {view.backHref ? (
        <p>
          <Link href={view.backHref} prefetch={false}>
            Bring it back
          </Link>
        </p>
      ) : null}
      <p>
        <Link href={view.planHref} prefetch={false}>
          Back to the plan
        </Link>
      </p>
    </>
  );
}
