'use client';
import { useRouter } from 'next/navigation';
import { useCallback, useEffect, useState } from 'react';
import { counted } from '#lib/units/format.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { actId } from './act-id.ts';
import { instantOn } from './act-instant.ts';
import { dropAct, keepAct, type QueuedAct, sendQueued } from './act-queue.ts';
import { Button } from './button.tsx';
import { JarCard, type JarCardShown } from './jar-card.tsx';
import { Problem } from './problem.tsx';
import styles from './stall-desk.module.css';
import { Tray } from './tray.tsx';

export type StallDeskProps = {
  placeId: string;
  cards: readonly JarCardShown[];
  where: string;
  /** The day of a demonstration; null where the device's own clock is right. */
  demoDay: PlainDate | null;
};

const DONE = { sold: 'sold', given: 'given', eaten: 'eaten' } as const;

/** The stall: what is in a jar by its lot or its line, and jars that leave; all from this device, with or without a signal. */
export function StallDesk({ placeId, cards, where, demoDay }: StallDeskProps) {
  const router = useRouter();
  const [text, setText] = useState('');
  const [jar, setJar] = useState<string | null>(null);
  const [who, setWho] = useState('');
  const [said, setSaid] = useState<string | null>(null);
  const [waiting, setWaiting] = useState(0);
  const [turnedBack, setTurnedBack] = useState<QueuedAct[]>([]);
  // Read while rendering: the address is put right before any effect runs.
  const [scanned] = useState(scannedJar);
  const card = jar === null ? undefined : cardOf(cards, jar);

  const send = useCallback(async () => {
    const sent = await sendQueued(placeId);
    setWaiting(sent.waiting);
    setTurnedBack(sent.refused);
    if (sent.said) {
      setSaid(sent.said);
      router.refresh();
    }
    return sent;
  }, [placeId, router]);

  useEffect(() => {
    if (scanned) setJar(scanned);
    void send();
    const again = () => void send();
    window.addEventListener('online', again);
    if ('serviceWorker' in navigator)
      navigator.serviceWorker.register('/sw.js', { updateViaCache: 'none' }).catch(() => undefined);
    return () => window.removeEventListener('online', again);
  }, [send, scanned]);

  async function take(of: JarCardShown, count: number, to: keyof typeof DONE) {
    const act = {
      id: actId(),
      what: 'take',
      slug: of.slug,
      ...(to === 'sold' ? { lot: of.lot } : {}),
      count: String(count),
      to,
      ...(to === 'sold' ? { who: where } : to === 'given' ? { who } : {}),
      at: demoDay ? instantOn(demoDay) : new Date().toISOString(),
    };
    await keepAct(placeId, act);
    const sent = await send();
    const refused = sent.refused.some((a) => a.id === act.id);
    const kept = `Kept on this device: ${counted(count, 'jar')} of ${of.name} ${DONE[to]}.`;
    setSaid(refused ? null : sent.reached ? sent.said : kept);
  }

  const lines = cards.filter((c) => c.onHand && c.against.length === 0);
  const firstOfLine = oneOfEach(lines);
  const others = oneOfEach(cards.filter((c) => c.onHand && !lines.some((l) => l.slug === c.slug)));
  return (
    <div className={styles.desk}>
      {turnedBack.map((a) => (
        <Problem key={a.id} title="Sent back by the house">
          {a.reason}{' '}
          <Button type="button" kind="quiet" onClick={() => void dropAct(a.id).then(send)}>
            Take it off the list
          </Button>
        </Problem>
      ))}
      {said ? <p role="status">{said}</p> : null}
      {waiting > 0 ? <p role="status">{waiting} waiting to send.</p> : null}
      <form
        className={styles.find}
        onSubmit={(e) => {
          e.preventDefault();
          setJar(text.trim());
        }}
      >
        <label>
          Lot or jar
          <input
            value={text}
            onChange={(e) => setText(e.target.value)}
            autoComplete="off"
            placeholder="25207-SCH-A/05"
          />
        </label>
        <Button size="large">What is in it?</Button>
      </form>
      {jar !== null && !card ? (
        <Problem title="Not found">No jar of lot {jar} is on this device. The code stands on the label.</Problem>
      ) : null}
      {card ? (
        <Tray title={card.name}>
          <JarCard card={card} jar={jar?.includes('/') ? jar.toUpperCase() : null} />
          {card.onHand && card.against.length === 0 ? (
            <div className={styles.sell}>
              {COUNTS.map((n) => (
                <Button key={n} type="button" size="large" kind="quiet" onClick={() => void take(card, n, 'sold')}>
                  Sold {n}
                </Button>
              ))}
            </div>
          ) : null}
          {card.onHand ? (
            <>
              <div className={styles.sell}>
                <Button type="button" size="large" kind="quiet" onClick={() => void take(card, 1, 'eaten')}>
                  Eaten
                </Button>
                {[...COUNTS, 4].map((n) => (
                  <Button key={n} type="button" size="large" kind="quiet" onClick={() => void take(card, n, 'given')}>
                    Given {n}
                  </Button>
                ))}
              </div>
              <div className={styles.find}>
                <label>
                  Given to whom? (may stay empty)
                  <input value={who} onChange={(e) => setWho(e.target.value)} maxLength={80} autoComplete="off" />
                </label>
              </div>
            </>
          ) : null}
        </Tray>
      ) : null}
      <Tray title="On the stall">
        {firstOfLine.length === 0 ? <p>No jar on hand may be sold. The label page says why.</p> : null}
        <div className={styles.lines}>
          {firstOfLine.map((c) => (
            <Button key={c.lot} type="button" size="large" kind="quiet" onClick={() => setJar(c.lot)}>
              {c.name}
            </Button>
          ))}
        </div>
        {others.length > 0 ? (
          <details className={styles.others}>
            <summary>For the house and gifts</summary>
            <div className={styles.lines}>
              {others.map((c) => (
                <Button key={c.lot} type="button" size="large" kind="quiet" onClick={() => setJar(c.lot)}>
                  {c.name}
                </Button>
              ))}
            </div>
          </details>
        ) : null}
      </Tray>
    </div>
  );
}

const COUNTS = [1, 2, 3] as const;
const oneOfEach = (cards: readonly JarCardShown[]): JarCardShown[] =>
  cards.filter((c, i) => cards.findIndex((o) => o.slug === c.slug) === i);

/** The jar whose code was read by the camera, where this page stands in for the jar's own without a signal. */
function scannedJar(): string | null {
  const path = typeof window === 'undefined' ? '' : window.location.pathname;
  const code = /^\/jar\/(.+)$/.exec(path)?.[1];
  return code ? decodeURIComponent(code) : null;
}

/** The card of a lot or of one of its jars, as typed. */
const cardOf = (cards: readonly JarCardShown[], typed: string): JarCardShown | undefined => {
  const code = typed.trim().toUpperCase();
  return (
    cards.find((c) => c.lot.toUpperCase() === code) ??
    cards.find((c) => c.lot.toUpperCase() === code.replace(/\/\d+$/, ''))
  );
};
