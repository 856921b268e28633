/** A place with one kitchen, one row and one shelf, and acts on it: enough for the ledger to be written to. */
import type { Act, ActKind, Entry } from '#lib/ledger/entry.ts';
import { type Lot, newLot } from '#lib/ledger/lot.ts';
import type { Movement } from '#lib/ledger/movement.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { createPlace } from '#lib/store/place-store.ts';
import { plainDate } from '#lib/units/plain-date.ts';

export const SMALL_DAY = plainDate('2025-09-13');

/** Writes an empty place of that id. */
export async function smallPlace(db: Db, id = 'p'): Promise<string> {
  await db.$transaction((tx) =>
    createPlace(tx, {
      id,
      name: `Place ${id}`,
      demo: false,
      day: null,
      timeZone: 'Europe/London',
      settings: {
        targetBrix: 65,
        invertedShare: 0,
        panLossG: 0,
        batchWarnCups: 6,
        batchStopCups: 8,
        crushedGPerCup: 235,
        lidMargin: 0.03,
        breakage: 0.02,
        reserve: 0.1,
        jarsBack: { eaten: 1, given: 0.4, sold: 0.15 },
        softCapHours: 24,
        dayEndsAt: '04:00',
      },
      kitchens: [],
      rooms: [],
      containers: [{ id: `${id}:bucket`, code: 'bucket', label: 'Bucket', tareG: 620, volumeMl: 10_000 }],
      jarKinds: [
        {
          id: `${id}:HP`,
          code: 'HP',
          label: 'half-pint',
          size: 'half-pint',
          fillMl: 237,
          pitchMm: 75,
          heightMm: 97,
          canning: true,
        },
      ],
      people: [],
      crops: [
        {
          id: `${id}:damson`,
          code: 'damson',
          foodId: 'damson',
          label: 'Damson',
          unit: 'tree',
          count: 3,
          gPerUnit: 20_000,
          windowFrom: '09-05',
          windowTo: '09-25',
          soldPercent: 0,
          eatenPercent: 0,
          cullPercent: 0,
          plantings: [
            {
              code: 'D3-05',
              row: 'D3',
              position: 5,
              block: null,
              cultivar: null,
              rootstock: null,
              planted: null,
              count: 1,
              unit: 'tree',
            },
          ],
        },
      ],
    }),
  );
  return id;
}

export const act = (id: string, kind: ActKind = 'receive'): Act => ({
  id,
  kind,
  day: SMALL_DAY,
  at: `${SMALL_DAY}T10:00:00.000Z`,
  person: null,
  device: null,
  note: null,
  payload: { typed: id },
  corrects: null,
});

export const entry = (id: string, movements: Movement[], lots: Lot[] = []): Entry => ({
  act: act(id),
  lots,
  movements,
  changes: [],
});

/** A lot of jars with so many in it, found. */
export function jars(id: string, n: number, known: Partial<Lot> = {}): Entry {
  const lot = newLot({
    id,
    code: id.toUpperCase(),
    kind: 'jars',
    label: `Line ${id}`,
    unit: 'jar',
    item: 'HP',
    seal: 'sealed',
    process: 'as tested',
    parentActId: `make-${id}`,
    madeOn: SMALL_DAY,
    since: `${SMALL_DAY}T10:00:00.000Z`,
    details: { netG: 311 },
    ...known,
  });
  return entry(
    `make-${id}`,
    [{ from: { sink: 'found' }, to: { lot: id }, qty: n, grams: n * 311, piece: null }],
    [lot],
  );
}
