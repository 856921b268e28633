/** The places of this database, and opening the first one: the demo, or an empty one of the person's own. */

import { WRENLATCH } from '#lib/demo/wrenlatch.ts';
import { database } from '#lib/store/database/database.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { createPlace, listPlaces } from '#lib/store/place-store.ts';
import { type Context, openContext } from './context.ts';

export const places = async (): Promise<{ id: string; name: string; demo: boolean }[]> => listPlaces(await database());

/**
 * The demo's stories are reckoned without loss or inversion; a kitchen has both. Film on pan and tools 60-150 g a batch, and
 * about 30 % of the sugar inverted in an ordinary cook: estimates of this project, until the household's own batches teach better.
 */
const LOSSES_UNTIL_LEARNT = { panLossG: 100, invertedShare: 0.3 };

/** The context of the chosen place; without a choice, of the only place there is; null when there is none (or several to choose from). */
export async function contextOf(chosen: string | undefined, instant: Date): Promise<Context | null> {
  const db = await database();
  if (chosen) {
    const context = await openContext(db, chosen, instant);
    if (context) return context;
  }
  const all = await listPlaces(db);
  return all.length === 1 ? openContext(db, (all[0] as { id: string }).id, instant) : null;
}

export interface OwnPlace {
  id: string;
  name: string;
  timeZone: string;
  altitudeM: number;
}

/**
 * An empty place of the person's own. It starts with a kitchen at the altitude given, and with the containers, jar kinds
 * and stores most people have, as a list to change; it has no records and no crops.
 */
export async function openOwnPlace(db: Db, own: OwnPlace): Promise<void> {
  const at = (kind: string, code: string) => `${own.id}:${kind}:${code}`;
  await db.$transaction((tx) =>
    createPlace(tx, {
      id: own.id,
      name: own.name,
      demo: false,
      day: null,
      timeZone: own.timeZone,
      settings: { ...WRENLATCH.settings, ...LOSSES_UNTIL_LEARNT },
      kitchens: [
        {
          id: at('kitchen', 'home'),
          code: 'home',
          label: 'Home kitchen',
          altitudeM: own.altitudeM,
          main: true,
          burners: [
            { code: 'hob-1', watts: 2500, outdoors: false },
            { code: 'hob-2', watts: 1800, outdoors: false },
          ],
          pans: [
            { code: 'pan-1', label: 'Wide pan', ml: 9000, diameterMm: null, maxFillPercent: 50, evapGPerMin: null },
          ],
          canners: [
            {
              code: 'canner-1',
              label: 'Canner',
              method: 'boiling-water',
              loads: { HP: 8, PT: 7, QT: 4 },
              heatUpS: 1500,
              reheatS: 600,
            },
          ],
          dryers: [],
        },
      ],
      rooms: [
        {
          id: at('room', 'shelf'),
          code: 'shelf',
          label: 'Shelf',
          kind: 'shelf',
          bays: 1,
          shelvesPerBay: 3,
          widthMm: 900,
          depthMm: 320,
          clearMm: 230,
          maxGPerShelf: 60_000,
          litres: null,
          crates: null,
          lowC: 10,
          highC: 21,
        },
        {
          id: at('room', 'cool'),
          code: 'cool',
          label: 'Cool place',
          kind: 'ambient',
          bays: null,
          shelvesPerBay: null,
          widthMm: null,
          depthMm: null,
          clearMm: null,
          maxGPerShelf: null,
          litres: null,
          crates: 10,
          lowC: 5,
          highC: 12,
        },
        {
          id: at('room', 'fridge'),
          code: 'fridge',
          label: 'Fridge',
          kind: 'fridge',
          bays: null,
          shelvesPerBay: null,
          widthMm: null,
          depthMm: null,
          clearMm: null,
          maxGPerShelf: null,
          litres: 40,
          crates: null,
          lowC: 2,
          highC: 5,
        },
        {
          id: at('room', 'freezer'),
          code: 'freezer',
          label: 'Freezer',
          kind: 'freezer',
          bays: null,
          shelvesPerBay: null,
          widthMm: null,
          depthMm: null,
          clearMm: null,
          maxGPerShelf: null,
          litres: 100,
          crates: null,
          lowC: -20,
          highC: -18,
        },
        {
          id: at('room', 'dry'),
          code: 'dry',
          label: 'Dry cupboard',
          kind: 'dry',
          bays: null,
          shelvesPerBay: null,
          widthMm: null,
          depthMm: null,
          clearMm: null,
          maxGPerShelf: null,
          litres: 60,
          crates: null,
          lowC: 14,
          highC: 22,
        },
      ],
      containers: [
        { id: at('container', 'bucket'), code: 'bucket', label: 'Bucket', tareG: 600, volumeMl: 10_000 },
        { id: at('container', 'none'), code: 'none', label: 'No container', tareG: 0, volumeMl: 1 },
      ],
      jarKinds: WRENLATCH.jarKinds.map((j) => ({ ...j, id: at('jar', j.code) })),
      people: [
        {
          id: at('person', 'me'),
          code: 'me',
          label: 'Me',
          role: 'grower',
          can: ['all'],
          minutes: [0, 180, 0, 180, 0, 300, 300],
        },
      ],
      crops: [],
    }),
  );
}

/** For route handlers and actions outside a place. */
export const openDatabaseOfProcess = database;
