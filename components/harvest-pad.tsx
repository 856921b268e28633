'use client';
import { useEffect, useReducer, useRef, useState } from 'react';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { shortDate } from '#lib/units/plain-date.ts';
import { actId } from './act-id.ts';
import { Caution } from './caution.tsx';
import type { FormAction } from './form-action.ts';
import { type HarvestAct, harvestAct, isGhostTap, recordLabel, weightDoubt } from './harvest-act.ts';
import { HarvestGrades } from './harvest-grades.tsx';
import { HarvestKeypad } from './harvest-keypad.tsx';
import styles from './harvest-pad.module.css';
import { afterTap, emptyPad, lastBucketNet, netGrams, type PadRow, type PadState } from './harvest-pad-state.ts';
import { HarvestPlainForm } from './harvest-plain-form.tsx';
import { HarvestReadout } from './harvest-readout.tsx';
import { HarvestRows } from './harvest-rows.tsx';
import { HarvestScale } from './harvest-scale.tsx';
import type { PadContainer } from './harvest-weights.ts';
import { keepPad, keptPad } from './kept-pad.ts';
import { kilogramsOrPounds } from './kilograms-or-pounds.ts';

export type HarvestPadProps = {
  rows: readonly PadRow[];
  containers: readonly PadContainer[];
  day: PlainDate;
  /** What waits on this device, and when it last reached the house ("17:42"). */
  queue: { waiting: number; lastSent: string | null };
  /** Takes the act; its answer is shown. A reason refuses it and the digits stay. */
  onRecord: (act: HarvestAct) => Promise<{ ok: true; said?: string } | { ok: false; reason: string }>;
  /** Where the plain form posts when the browser runs no script. */
  action?: FormAction;
  /** Row chosen already, e.g. from the picking list. */
  firstRowId?: string;
  /** Id of the one act the form without a script can send. */
  plainId?: string;
};

/**
 * The shed screen: choose the row, type what the scale says bucket by bucket, say the grades, record. Digits are kept on the
 * device as they are typed. One bucket is 4 taps and 4 keys.
 */
export function HarvestPad({ rows, containers, day, queue, onRecord, action, firstRowId, plainId }: HarvestPadProps) {
  const [pad, tap] = useReducer(afterTap, emptyPad(containers[0]?.id ?? ''));
  const [said, setSaid] = useState<{ ok: boolean; text: string } | null>(null);
  const [sending, setSending] = useState(false);
  const lastTap = useRef<number | null>(null);
  /** The id goes with what is on the pad: pressing again after a failure is the same act, an edit makes another. */
  const act = useRef<{ pad: PadState; id: string } | null>(null);
  const restored = useRef(false);
  const row = rows.find((r) => r.id === pad.rowId) ?? null;
  const net = netGrams(pad, containers);
  const doubt = weightDoubt(pad, row, containers);

  useEffect(() => {
    if (restored.current) return;
    restored.current = true;
    const kept = keptPad(rows, containers);
    const first = rows.find((r) => r.id === firstRowId);
    if (kept) tap({ do: 'restore', state: kept });
    if (first) tap({ do: 'row', row: first });
  }, [rows, containers, firstRowId]);
  useEffect(() => {
    if (restored.current) keepPad(pad);
  }, [pad]);

  async function record(at: number) {
    if (sending || isGhostTap(lastTap.current, at)) return;
    lastTap.current = at;
    if (act.current?.pad !== pad) act.current = { pad, id: actId() };
    const result = harvestAct(pad, { id: act.current.id, day, containers });
    if (!result.ok) return setSaid({ ok: false, text: result.reason });
    setSending(true);
    try {
      const answer = await onRecord(result.act);
      if (answer.ok) tap({ do: 'recorded' });
      setSaid(
        answer.ok
          ? { ok: true, text: answer.said ?? `Recorded: ${kilogramsOrPounds(result.act.netG)}.` }
          : { ok: false, text: answer.reason },
      );
    } catch {
      setSaid({ ok: false, text: 'That did not get through. Nothing typed is lost: press Record again.' });
    } finally {
      setSending(false);
    }
  }

  return (
    <>
      <noscript>
        <style>{'[data-pad]{display:none}'}</style>
        <HarvestPlainForm rows={rows} containers={containers} day={day} action={action} plainId={plainId} />
      </noscript>
      <div className={styles.pad} data-pad>
        <p className={styles.queue}>
          <span>{shortDate(day)}</span>
          <span>
            {queue.waiting > 0 ? `${queue.waiting} waiting to send` : 'All sent'}
            {queue.lastSent ? `, last sent ${queue.lastSent}` : ''}
          </span>
        </p>
        <HarvestRows rows={rows} chosen={row} tap={tap} />
        <div className={styles.bench}>
          <div className={styles.scale}>
            <HarvestReadout pad={pad} net={net} bucketNet={lastBucketNet(pad, containers)} tap={tap} />
            <HarvestKeypad pad={pad} tap={tap} />
          </div>
          <div className={styles.side}>
            <HarvestScale pad={pad} containers={containers} tap={tap} />
            {doubt ? (
              <Caution
                title={`This row usually gives about ${doubt.usualKg} kg at a picking. Which did the scale show?`}
              >
                <div className={styles.doubt}>
                  <button
                    type="button"
                    className={styles.chip}
                    aria-pressed={pad.unit === 'kg'}
                    onClick={() => tap({ do: 'all-in-unit', unit: 'kg' })}
                  >
                    kilograms: {kilogramsOrPounds(doubt.asKgG)}
                  </button>
                  <button
                    type="button"
                    className={styles.chip}
                    aria-pressed={pad.unit === 'lb'}
                    onClick={() => tap({ do: 'all-in-unit', unit: 'lb' })}
                  >
                    pounds: {kilogramsOrPounds(doubt.asLbG)}
                  </button>
                </div>
                <p>It can be recorded as it is, and is asked about tonight.</p>
              </Caution>
            ) : null}
            <HarvestGrades pad={pad} net={net} tap={tap} />
            <label className={styles.tick}>
              <input type="checkbox" checked={pad.groundFall} onChange={() => tap({ do: 'ground-fall' })} />
              <span>
                <b>Picked up from the ground</b>
                <span className={styles.hint}>Never goes into juice, trim for food, or a sale.</span>
              </span>
            </label>
          </div>
        </div>
        <div className={styles.bar}>
          <p role="status" className={said && !said.ok ? styles.refused : styles.said}>
            {said?.text ?? ''}
          </p>
          <button type="button" className={styles.record} disabled={sending} onClick={(e) => record(e.timeStamp)}>
            {sending ? 'Recording …' : recordLabel(net)}
          </button>
        </div>
      </div>
    </>
  );
}
