/** Places and what stands in them. */
import type { OwnFigures } from '#lib/reference/recipes/own-recipe.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import type { Prisma } from '#prisma/generated/sqlite/client.ts';
import type { Db, Tx } from './database/open-database.ts';
import { saveOwnRecipe } from './own-recipe-store.ts';
import type { Canner, Crop, Kitchen, Place, PlaceSettings, StoreRoom } from './place.ts';

const BY_CODE = { orderBy: { code: 'asc' } } as const;
/** Everything in an order of its own: the two databases give rows of no order differently. */
const WHOLE_PLACE = {
  kitchens: { include: { burners: BY_CODE, pans: BY_CODE, canners: BY_CODE, dryers: BY_CODE }, ...BY_CODE },
  rooms: BY_CODE,
  containers: BY_CODE,
  jarKinds: { orderBy: [{ fillMl: 'asc' }, { code: 'asc' }] },
  people: BY_CODE,
  recipes: { orderBy: [{ code: 'asc' }, { version: 'asc' }] },
  crops: { include: { plantings: BY_CODE }, orderBy: [{ windowFrom: 'asc' }, { code: 'asc' }] },
} satisfies Prisma.PlaceInclude;

/** The place with everything in it, or null. */
export async function loadPlace(db: Db | Tx, id: string): Promise<Place | null> {
  const row = await db.place.findUnique({ where: { id }, include: WHOLE_PLACE });
  if (!row) return null;
  const { recipes, ...place } = row;
  return {
    ...place,
    ownRecipes: recipes.map(({ recipeId, code, version, retired, figures }) => ({
      recipeId,
      code,
      version,
      retired,
      figures: figures as unknown as OwnFigures,
    })),
    day: row.day as PlainDate | null,
    settings: row.settings as unknown as PlaceSettings,
    kitchens: row.kitchens.map(
      (k): Kitchen => ({
        ...k,
        canners: k.canners.map((c) => ({
          ...c,
          loads: c.loads as Canner['loads'],
          method: c.method as Canner['method'],
        })),
      }),
    ),
    rooms: row.rooms.map((r) => ({ ...r, kind: r.kind as StoreRoom['kind'] })),
    people: row.people.map((p) => ({ ...p, can: p.can as string[], minutes: p.minutes as number[] })),
  };
}

/** Id, name and kind of every place in this database, oldest first. */
export const listPlaces = (db: Db): Promise<{ id: string; name: string; demo: boolean }[]> =>
  db.place.findMany({ select: { id: true, name: true, demo: true }, orderBy: { createdAt: 'asc' } });

/** Sets the demo's day and clock. */
export async function setPlaceDay(
  tx: Tx,
  id: string,
  day: PlainDate,
  clock: { time: string; setAt: string },
): Promise<void> {
  const { settings } = await tx.place.findUniqueOrThrow({ where: { id }, select: { settings: true } });
  await tx.place.update({ where: { id }, data: { day, settings: { ...(settings as object), clock } } });
}

/** Keeps these of the household's constants, the others as they were. */
export async function saveSettings(tx: Tx, id: string, kept: Partial<PlaceSettings>): Promise<void> {
  const { settings } = await tx.place.findUniqueOrThrow({ where: { id }, select: { settings: true } });
  await tx.place.update({ where: { id }, data: { settings: { ...(settings as object), ...kept } } });
}

/**
 * Lets one writer at a time into a place until its transaction ends: PostgreSQL runs transactions side by side, and two
 * that read the same jars would both take them. SQLite has one writer anyway.
 */
export const lockPlace = (tx: Tx, id: string): Promise<unknown> => tx.place.updateMany({ where: { id }, data: { id } });

export type NewPlace = Omit<Place, 'ownRecipes'> & Partial<Pick<Place, 'ownRecipes'>>;

/** Writes a whole place, empty of records. */
export async function createPlace(tx: Tx, place: NewPlace): Promise<void> {
  const { kitchens, rooms, containers, jarKinds, people, crops, settings, ownRecipes = [], ...own } = place;
  await tx.place.create({ data: { ...own, settings: settings as object } });
  const placeId = place.id;
  for (const { burners, pans, canners, dryers, ...kitchen } of kitchens) {
    const of = <T extends { code: string }>(kind: string, rows: T[]) =>
      rows.map((r) => ({ ...r, id: `${kitchen.id}:${kind}:${r.code}` }));
    await tx.kitchen.create({
      data: {
        ...kitchen,
        placeId,
        burners: { create: of('burner', burners) },
        pans: { create: of('pan', pans) },
        canners: { create: of('canner', canners) },
        dryers: { create: of('dryer', dryers) },
      },
    });
  }
  await tx.storeRoom.createMany({ data: rooms.map((r) => ({ ...r, placeId })) });
  await tx.container.createMany({ data: containers.map((c) => ({ ...c, placeId })) });
  await tx.jarKind.createMany({ data: jarKinds.map((j) => ({ ...j, placeId })) });
  await tx.person.createMany({ data: people.map((p) => ({ ...p, placeId })) });
  await tx.crop.createMany({ data: crops.map(({ plantings: _, ...c }) => ({ ...c, placeId })) });
  for (const recipe of ownRecipes) await saveOwnRecipe(tx, placeId, recipe);
  await tx.planting.createMany({
    data: crops.flatMap((c) =>
      c.plantings.map((p) => ({ ...p, id: `${placeId}:planting:${p.code}`, placeId, cropId: c.id })),
    ),
  });
}

/** Takes a place and all its records away: only for the demo, which is begun again. */
export async function removePlace(tx: Tx, id: string): Promise<void> {
  const at = { where: { placeId: id } };
  await tx.movement.deleteMany(at);
  await tx.reading.deleteMany(at);
  await tx.lot.deleteMany(at);
  await tx.batch.deleteMany(at);
  await tx.act.deleteMany(at);
  await tx.plan.deleteMany(at);
  await tx.forecast.deleteMany(at);
  await tx.useRate.deleteMany(at);
  await tx.ownRecipe.deleteMany(at);
  await tx.planting.deleteMany(at);
  await tx.crop.deleteMany(at);
  await tx.person.deleteMany(at);
  await tx.jarKind.deleteMany(at);
  await tx.container.deleteMany(at);
  await tx.storeRoom.deleteMany(at);
  const kitchens = { where: { kitchen: { placeId: id } } };
  await tx.burner.deleteMany(kitchens);
  await tx.pan.deleteMany(kitchens);
  await tx.canner.deleteMany(kitchens);
  await tx.dryer.deleteMany(kitchens);
  await tx.kitchen.deleteMany(at);
  await tx.place.deleteMany({ where: { id } });
}

export interface CropRow extends Omit<Crop, 'id' | 'plantings' | 'soldPercent' | 'eatenPercent' | 'cullPercent'> {
  row: string;
}

/** Adds a crop with one row of it. */
export async function addCrop(tx: Tx, placeId: string, { row, ...crop }: CropRow): Promise<void> {
  const id = `${placeId}:crop:${crop.code}`;
  await tx.crop.upsert({ where: { id }, create: { ...crop, id, placeId }, update: crop });
  const plantingId = `${placeId}:planting:${row}:${crop.code}`;
  const shared = await tx.planting.findFirst({ where: { placeId, code: row, NOT: { id: plantingId } } });
  const planting = {
    id: plantingId,
    placeId,
    // A row has one planting of its own name; what shares the row is named after its crop too.
    code: shared ? `${row} ${crop.code}` : row,
    row,
    cropId: id,
    count: crop.count,
    unit: crop.unit,
  };
  await tx.planting.upsert({
    where: { id: planting.id },
    create: planting,
    update: { count: crop.count, unit: crop.unit },
  });
}

/** Use a week of each line as the household stated it. */
export const statedUse = async (
  db: Db | Tx,
  placeId: string,
): Promise<{ line: string; perWeek: number; source: string }[]> =>
  (await db.useRate.findMany({ where: { placeId }, orderBy: { line: 'asc' } })).map((r) => ({
    line: r.line,
    perWeek: r.milliPerWeek / 1000,
    source: r.source,
  }));

/** What the household states of one line; null takes the statement back. */
export async function saveStatedUse(
  tx: Tx,
  placeId: string,
  { line, perWeek, source }: { line: string; perWeek: number | null; source: string },
): Promise<void> {
  if (perWeek === null) {
    await tx.useRate.deleteMany({ where: { placeId, line } });
    return;
  }
  const data = { milliPerWeek: Math.round(perWeek * 1000), source };
  await tx.useRate.upsert({
    where: { placeId_line: { placeId, line } },
    create: { id: `${placeId}:use:${line}`, placeId, line, ...data },
    update: data,
  });
}
