'use client';
import { useRouter } from 'next/navigation';
import { useCallback, useEffect, useState } from 'react';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { actId } from './act-id.ts';
import { instantOn } from './act-instant.ts';
import { dropAct, keepAct, type QueuedAct, queued, sendQueued } from './act-queue.ts';
import { deviceId } from './device-id.ts';
import type { FormAction } from './form-action.ts';
import type { HarvestAct } from './harvest-act.ts';
import styles from './harvest-desk.module.css';
import { HarvestPad } from './harvest-pad.tsx';
import type { PadRow } from './harvest-pad-state.ts';
import type { PadContainer } from './harvest-weights.ts';
import { NotWeighed } from './not-weighed.tsx';
import { NothingRipe } from './nothing-ripe.tsx';
import { Problem } from './problem.tsx';

export type HarvestDeskProps = {
  rows: readonly PadRow[];
  containers: readonly PadContainer[];
  day: PlainDate;
  placeId: string;
  action: FormAction;
  said: string | null;
  refused: string | null;
  firstRowId?: string;
  /** Id of the one act the form without a script can send. */
  plainId: string;
};

/** The shed screen with its memory: what is recorded is kept on the device first and sent when the house can be reached. */
export function HarvestDesk({ placeId, day, action, said, refused, ...pad }: HarvestDeskProps) {
  const router = useRouter();
  const [waiting, setWaiting] = useState(0);
  const [lastSent, setLastSent] = useState<string | null>(null);
  const [turnedBack, setTurnedBack] = useState<QueuedAct[]>([]);
  const [pickedOn, setPickedOn] = useState<string>(day);

  const send = useCallback(async () => {
    const before = (await queued(placeId)).filter((a) => a.reason === null).length;
    const sent = await sendQueued(placeId);
    setWaiting(sent.waiting);
    setTurnedBack(sent.refused);
    if (sent.reached && before > 0) {
      setLastSent(new Date().toTimeString().slice(0, 5));
      router.refresh();
    }
    return sent;
  }, [placeId, router]);

  useEffect(() => {
    void send();
    const again = () => void send();
    const seen = () => document.visibilityState === 'visible' && again();
    window.addEventListener('online', again);
    document.addEventListener('visibilitychange', seen);
    if ('serviceWorker' in navigator)
      navigator.serviceWorker.register('/sw.js', { updateViaCache: 'none' }).catch(() => undefined);
    return () => {
      window.removeEventListener('online', again);
      document.removeEventListener('visibilitychange', seen);
    };
  }, [send]);

  async function record(act: Record<string, unknown> & { id: string }) {
    await keepAct(placeId, {
      ...act,
      device: deviceId(),
      at: pickedOn === day ? instantOn(day) : null,
      nothing: act.nothing ?? null,
    });
    const sent = await send();
    const back = sent.refused.find((a) => a.id === act.id);
    if (back) {
      await dropAct(back.id);
      setTurnedBack((list) => list.filter((a) => a.id !== back.id));
      return { ok: false as const, reason: back.reason ?? 'Not taken.' };
    }
    const kept = sent.reached ? sent.said : 'No signal: kept on this phone, and sent by itself when there is one.';
    return { ok: true as const, ...(kept ? { said: kept } : {}) };
  }

  return (
    <div className={styles.desk}>
      {refused ? <Problem title="Not recorded">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      {turnedBack.map((a) => (
        <Problem key={a.id} title="Sent back by the house">
          {a.reason}{' '}
          <button type="button" className={styles.drop} onClick={() => void dropAct(a.id).then(send)}>
            Take it off the list
          </button>
        </Problem>
      ))}
      <details className={styles.look} open={pickedOn !== day}>
        <summary>Picked on another day?</summary>
        <label className={styles.lookForm}>
          Picked on
          <input
            type="date"
            className={styles.select}
            value={pickedOn}
            onChange={(e) => setPickedOn(e.target.value || day)}
          />
        </label>
      </details>
      <HarvestPad
        {...pad}
        day={pickedOn as PlainDate}
        queue={{ waiting, lastSent }}
        action={action}
        onRecord={(act: HarvestAct) => record({ ...act })}
      />
      <NotWeighed
        rows={pad.rows}
        containers={pad.containers}
        onKeep={(id, rowId, unweighed) =>
          record({ id, rowId, day, readings: [], grades: {}, groundFall: false, unweighed })
        }
      />
      <NothingRipe
        rows={pad.rows}
        onLook={(rowId) =>
          record({
            id: actId(),
            rowId,
            day,
            readings: [],
            grades: {},
            groundFall: false,
            nothing: 'nothing ripe',
          })
        }
      />
    </div>
  );
}
