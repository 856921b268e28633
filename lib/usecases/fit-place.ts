/** A place is fitted out: a kitchen, pan, canner, store, container, jar or person is added, changed or taken away, each as an act. */
import {
  FITTING_KINDS,
  type FieldSpec,
  type FittingKind,
  type FittingValues,
  fieldsOf,
  KITCHEN_KINDS,
  STORE_KINDS,
  STORE_NAMES,
  type StoreKind,
} from '#lib/forms/fittings.ts';
import type { Refusal } from '#lib/ledger/entry.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { type Fitting, heldBy, removeFitting, saveFitting } from '#lib/store/fitting-store.ts';
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import type { Kitchen, Place } from '#lib/store/place.ts';
import { loadPlace } from '#lib/store/place-store.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';
import { freeCode } from './free-code.ts';

/** Which fitting: its kind, the kitchen it stands in, its code; `new` for one that is not there yet. */
export interface FittingAddress {
  kind: FittingKind;
  kitchen: string | null;
  code: string;
  /** Decides what is asked of a store that is new. */
  storeKind: StoreKind | null;
}

/** A fitting as it stands, or as a blank form; null when there is no such thing. */
export interface FittingView extends FittingAddress {
  title: string;
  fields: readonly FieldSpec[];
  stored: FittingValues;
  /** Codes for the address of the kitchen it stands in. */
  kitchenLabel: string | null;
}

const isOneOf = <T extends string>(list: readonly T[], word: string | undefined): word is T =>
  list.some((x) => x === word);

/** The address in a page's path and query, or null when it names nothing. */
export function fittingAddress(
  kind: string,
  code: string,
  q: { kitchen?: string; as?: string },
): FittingAddress | null {
  if (!isOneOf(FITTING_KINDS, kind)) return null;
  return {
    kind,
    code,
    kitchen: KITCHEN_KINDS.includes(kind) ? (q.kitchen ?? null) : null,
    storeKind: isOneOf(STORE_KINDS, q.as) ? q.as : null,
  };
}

export function readFitting({ place }: Context, a: FittingAddress): FittingView | null {
  const kitchen = place.kitchens.find((k) => k.code === a.kitchen);
  if (KITCHEN_KINDS.includes(a.kind) && !kitchen) return null;
  const row = a.code === 'new' ? null : rowsOf(place, a.kind, kitchen).find((r) => r.code === a.code);
  if (row === undefined) return null;
  const storeKind = a.kind === 'store' ? ((row?.kind as StoreKind | undefined) ?? a.storeKind ?? 'shelf') : null;
  const name = a.kind === 'store' ? STORE_NAMES[storeKind ?? 'shelf'] : NAMES[a.kind];
  return {
    ...a,
    storeKind,
    title: row ? String(row.label ?? name) : `${name}, new`,
    fields: fieldsOf(a.kind, { jars: place.jarKinds.filter((j) => j.canning), storeKind }),
    stored: row ? flat(row) : {},
    kitchenLabel: kitchen?.label ?? null,
  };
}

const NAMES: Readonly<Record<FittingKind, string>> = {
  kitchen: 'Kitchen',
  burner: 'Burner',
  pan: 'Pan',
  canner: 'Canner',
  dryer: 'Dryer',
  store: 'Store',
  container: 'Container',
  jar: 'Jar',
  person: 'Person',
};

type Row = { code: string } & Readonly<Record<string, unknown>>;

function rowsOf(place: Place, kind: FittingKind, kitchen: Kitchen | undefined): readonly Row[] {
  const all: Readonly<Record<FittingKind, readonly { code: string }[]>> = {
    kitchen: place.kitchens,
    burner: kitchen?.burners ?? [],
    pan: kitchen?.pans ?? [],
    canner: kitchen?.canners ?? [],
    dryer: kitchen?.dryers ?? [],
    store: place.rooms,
    container: place.containers,
    jar: place.jarKinds,
    person: place.people,
  };
  return all[kind] as readonly Row[];
}

/** A row by the names of its fields: lists and loads as `minutes.0`, `loads.HP`. */
function flat(row: Row): FittingValues {
  const one = ([key, v]: [string, unknown]): [string, string | number | boolean | null][] =>
    typeof v === 'object' && v !== null
      ? Object.entries(v).map(([k, x]) => [`${key}.${k}`, x as string | number | boolean | null])
      : [[key, v as string | number | boolean | null]];
  return Object.fromEntries(Object.entries(row).flatMap(one));
}

/** Keeps what was typed of a fitting. @returns what was said, and the code it has. */
export async function keepFitting(
  ctx: Context,
  input: { id: string; at: FittingAddress; values: FittingValues },
): Promise<Written<{ said: string; code: string }>> {
  const act = actOf(ctx, input.id, 'place', { ...input.at, values: input.values });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const place = (await loadPlace(tx, ctx.place.id)) ?? ctx.place;
    const view = readFitting({ ...ctx, place }, input.at);
    if (!view) return { refused: `there is no ${input.at.kind} ${input.at.code} here` };
    const kitchen = place.kitchens.find((k) => k.code === input.at.kitchen);
    const others = rowsOf(place, view.kind, kitchen);
    const fitting = fittingOf(view, input.values, kitchen, others);
    if ('refused' in fitting) return fitting;
    await saveFitting(tx, place.id, fitting);
    const label = typeof input.values.label === 'string' ? input.values.label : NAMES[view.kind];
    return {
      entry: { act, lots: [], movements: [], changes: [] },
      tell: { said: `${label} is noted.`, code: fitting.row.code },
    };
  });
}

function fittingOf(
  view: FittingView,
  values: FittingValues,
  kitchen: Kitchen | undefined,
  others: readonly Row[],
): Fitting | Refusal {
  const isNew = view.code === 'new';
  const taken = new Set(['new', ...others.map((o) => o.code)]);
  const code = isNew ? freeCode(String(values.label ?? view.kind), { taken, longest: 30, otherwise: 'x' }) : view.code;
  const wrong = contradiction(view, values);
  if (wrong) return { refused: wrong };
  const num = (key: string): number => Number(values[key] ?? 0);
  const maybe = (key: string): number | null => (typeof values[key] === 'number' ? values[key] : null);
  const word = (key: string): string => String(values[key] ?? '');
  const kitchenId = kitchen?.id ?? '';
  const named = { code, label: word('label') };
  switch (view.kind) {
    case 'kitchen': {
      const main = values.main === true || others.every((k) => k.code === code || k.main !== true);
      return { kind: 'kitchen', row: { ...named, altitudeM: num('altitudeM'), main } };
    }
    case 'burner':
      return { kind: 'burner', kitchenId, row: { code, watts: num('watts'), outdoors: values.outdoors === true } };
    case 'pan': {
      const measured = { maxFillPercent: maybe('maxFillPercent'), evapGPerMin: maybe('evapGPerMin') };
      return { kind: 'pan', kitchenId, row: { ...named, ml: num('ml'), diameterMm: maybe('diameterMm'), ...measured } };
    }
    case 'canner': {
      const method = word('method') === 'steam' ? 'steam' : 'boiling-water';
      return {
        kind: 'canner',
        kitchenId,
        row: { ...named, method, loads: loadsOf(values), heatUpS: num('heatUpS'), reheatS: num('reheatS') },
      };
    }
    case 'dryer': {
      const row = {
        code,
        trays: num('trays'),
        trayCm2: num('trayCm2'),
        gPerTray: num('gPerTray'),
        centiC: num('centiC'),
      };
      return { kind: 'dryer', kitchenId, row };
    }
    case 'store': {
      const shelves = {
        bays: maybe('bays'),
        shelvesPerBay: maybe('shelvesPerBay'),
        widthMm: maybe('widthMm'),
        depthMm: maybe('depthMm'),
        clearMm: maybe('clearMm'),
        maxGPerShelf: maybe('maxGPerShelf'),
      };
      const room = { litres: maybe('litres'), crates: maybe('crates'), lowC: maybe('lowC'), highC: maybe('highC') };
      return { kind: 'store', row: { ...named, kind: view.storeKind ?? 'shelf', ...shelves, ...room } };
    }
    case 'container':
      return { kind: 'container', row: { ...named, tareG: num('tareG'), volumeMl: num('volumeMl') } };
    case 'jar': {
      const room = { fillMl: num('fillMl'), pitchMm: num('pitchMm'), heightMm: num('heightMm') };
      return { kind: 'jar', row: { ...named, size: word('size') || null, ...room, canning: values.canning === true } };
    }
    case 'person': {
      const minutes = [0, 1, 2, 3, 4, 5, 6].map((day) => num(`minutes.${day}`));
      return { kind: 'person', row: { ...named, role: word('role'), can: ['all'], minutes } };
    }
  }
}

/** Jars to a load by kind of jar; kinds that do not fit are left out. */
const loadsOf = (values: FittingValues): Record<string, number> =>
  Object.fromEntries(
    Object.entries(values).flatMap(([k, n]) =>
      k.startsWith('loads.') && typeof n === 'number' && n > 0 ? [[k.slice('loads.'.length), n]] : [],
    ),
  );

/** What cannot be: said with the numbers. */
function contradiction(view: FittingView, v: FittingValues): string | null {
  if (view.kind === 'store' && typeof v.lowC === 'number' && typeof v.highC === 'number' && v.lowC > v.highC)
    return `the coldest, ${v.lowC} °C, is above the warmest, ${v.highC} °C`;
  if (view.kind === 'canner' && Object.keys(loadsOf(v)).length === 0)
    return 'a canner needs the number of jars to a load for at least one kind of jar';
  if (view.kind === 'jar' && v.canning === true && !v.size)
    return 'a jar made for canning needs its size in the process tables: no minutes are printed for another';
  return null;
}

/** Takes a fitting away; refused while records hang on it. */
export async function dropFitting(
  ctx: Context,
  input: { id: string; at: FittingAddress },
): Promise<Written<{ said: string }>> {
  const { at } = input;
  const act = actOf(ctx, input.id, 'place', { ...at, gone: true });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const view = readFitting(ctx, at);
    if (!view || at.code === 'new') return { refused: `there is no ${at.kind} ${at.code} here` };
    const kept = await whyKept(tx, ctx, at);
    if (kept) return { refused: `${view.title} stays: ${kept}` };
    const kitchenId =
      ctx.place.kitchens.find((k) => k.code === (at.kind === 'kitchen' ? at.code : at.kitchen))?.id ?? null;
    await removeFitting(tx, ctx.place.id, { kind: at.kind, kitchenId, code: at.code });
    return {
      entry: { act, lots: [], movements: [], changes: [] },
      tell: { said: `${view.title} is taken off the list.` },
    };
  });
}

const HANGS: Partial<Record<FittingKind, string>> = {
  kitchen: 'batches were cooked there',
  store: 'lots stand or stood there',
  jar: 'lots are kept in it',
};

async function whyKept(tx: Tx, ctx: Context, { kind, code }: FittingAddress): Promise<string | null> {
  if (kind === 'kitchen' && ctx.place.kitchens.length === 1) return 'it is the only kitchen';
  const records = await heldBy(tx, ctx.place.id, kind, code);
  return records > 0 ? `${records} ${HANGS[kind] ?? 'records hang on it'}` : null;
}
