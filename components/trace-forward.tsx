import { counted } from '#lib/units/format.ts';
import { Tray } from './tray.tsx';

export type TraceForwardProps = {
  view: {
    code: string;
    total: number;
    placedPercent: number;
    batches: readonly { code: string; line: string; jars: number }[];
    sums: readonly { what: string; count: number }[];
  };
};

/** One step forward and all the way: the batches a lot went into, and what became of their jars. */
export function TraceForward({ view }: TraceForwardProps) {
  return (
    <Tray title="Where it went">
      {view.batches.length === 0 ? (
        <p>It went into no batch yet.</p>
      ) : (
        <>
          <p>
            <b>
              {counted(view.total, 'jar or pack', 'jars and packs')} of{' '}
              {counted(view.batches.length, 'batch', 'batches')}:{' '}
              {view.sums.map((s) => `${s.count} ${s.what}`).join(', ')}.
            </b>{' '}
            {view.placedPercent} % placed.
          </p>
          <details open={view.batches.length <= 12}>
            <summary>Batches</summary>
            <ul>
              {view.batches.map((b) => (
                <li key={b.code}>
                  <a href={`/batches/${b.code}`}>{b.code}</a> {b.line}, {b.jars}
                </li>
              ))}
            </ul>
          </details>
        </>
      )}
      <p>
        <a href={`/recall?code=${encodeURIComponent(view.code)}`}>Every jar of it and where each is</a>
      </p>
    </Tray>
  );
}
