/**
 * Acts recorded on this device, kept until the house has answered each one. A refused act stays with its reason; nothing
 * typed is lost. Only one tab sends at a time; sending again changes nothing, for every act carries its own id.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

export type QueuedAct = {
  id: string;
  placeId: string;
  act: Record<string, unknown>;
  reason: string | null;
  queuedAt: string;
};
export type Sent = { said: string | null; waiting: number; refused: QueuedAct[]; reached: boolean };

interface QueueSchema extends DBSchema {
  acts: { key: string; value: QueuedAct };
}

const open = (): Promise<IDBPDatabase<QueueSchema>> =>
  openDB<QueueSchema>('stillroom', 1, { upgrade: (db) => void db.createObjectStore('acts', { keyPath: 'id' }) });

export async function keepAct(placeId: string, act: { id: string } & Record<string, unknown>): Promise<void> {
  const db = await open();
  await db.put('acts', { id: act.id, placeId, act, reason: null, queuedAt: new Date().toISOString() });
}

export async function queued(placeId: string): Promise<QueuedAct[]> {
  const db = await open();
  return (await db.getAll('acts')).filter((a) => a.placeId === placeId);
}

export async function dropAct(id: string): Promise<void> {
  await (await open()).delete('acts', id);
}

type Answer =
  | { id: string; status: 'saved' | 'known' | 'question'; said: string }
  | { id: string; status: 'refused'; reason: string };

/** Sends what waits, oldest first. Without a signal nothing changes. */
export function sendQueued(placeId: string): Promise<Sent> {
  const send = () => sendNow(placeId);
  return 'locks' in navigator ? navigator.locks.request('stillroom-queue', send) : send();
}

async function sendNow(placeId: string): Promise<Sent> {
  const db = await open();
  const waiting = (await queued(placeId))
    .filter((a) => a.reason === null)
    .sort((a, b) => a.queuedAt.localeCompare(b.queuedAt));
  let said: string | null = null;
  let reached = true;
  if (waiting.length > 0) {
    const answers = await post(placeId, waiting);
    reached = answers !== null;
    for (const answer of answers ?? []) {
      if (answer.status === 'refused') {
        const act = waiting.find((a) => a.id === answer.id);
        if (act) await db.put('acts', { ...act, reason: answer.reason });
      } else {
        await db.delete('acts', answer.id);
        said = answer.said;
      }
    }
  }
  const left = await queued(placeId);
  return {
    said,
    waiting: left.filter((a) => a.reason === null).length,
    refused: left.filter((a) => a.reason !== null),
    reached,
  };
}

async function post(placeId: string, waiting: QueuedAct[]): Promise<Answer[] | null> {
  try {
    const response = await fetch(`/api/acts?place=${encodeURIComponent(placeId)}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ acts: waiting.map((a) => a.act) }),
      signal: AbortSignal.timeout(15_000),
    });
    if (!response.ok) return null;
    return ((await response.json()) as { answers: Answer[] }).answers;
  } catch {
    return null;
  }
}
