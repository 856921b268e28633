/**
 * The winter batch: sour cherries from the freezer, weighed out of their packs, with the powder that was dried in autumn; and two days later
 * the set that was seen, from which the strength of the powder is learnt. A batch like one a person makes: its sheet is worked out and kept.
 */
import { batchSheet } from '#lib/batch/batch-sheet.ts';
import { inStockUnit } from '#lib/batch/dose-stock.ts';
import { FORMULA_VERSION, frozenSheet } from '#lib/batch/freeze-sheet.ts';
import type { FrozenSheet } from '#lib/batch/frozen-sheet.ts';
import { drawByWeight } from '#lib/ledger/acts/draw-by-weight.ts';
import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { fillJars } from '#lib/ledger/acts/fill-jars.ts';
import { type Draw, startBatch } from '#lib/ledger/acts/start-batch.ts';
import { type BatchRecord, JAR_SET } from '#lib/ledger/batch-record.ts';
import { isRefusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { batchCode } from '#lib/ledger/lot-code.ts';
import { jarSizeOf } from '#lib/reference/jar-sizes.ts';
import { doseItem } from '#lib/reference/recipes/dose-items.ts';
import { recipeOf } from '#lib/reference/recipes/recipe-book.ts';
import { feet } from '#lib/units/convert.ts';
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';
import { splitWhole } from '#lib/units/split.ts';
import { demoId } from './demo-ids.ts';
import { held, type SeasonState, seasonAct, write } from './season-state.ts';
import { WRENLATCH } from './wrenlatch.ts';

/** Demo values: what is weighed out of the packs, more powder than the recipe says, for it is untested, and how the jars were found. */
export const POWDER_JAM = {
  recipeId: 'sour-cherry-powder-jam',
  fruitG: 1300,
  powderG: 180,
  set: 2,
  jar: 'HP',
} as const;
const FROZEN_LINE = 'frozen-sour-cherries';
const BATCH = 'powder-jam';

/** Made where cherries, powder and the rest are there; stood down where the person made it or used them up. */
export function playPowderJam(s: SeasonState, key: string, day: PlainDate): void {
  if (s.personsBatches.has(`${day} ${POWDER_JAM.recipeId}`)) return;
  const copies = (fits: (l: HeldLot) => boolean) => held(s, fits).map((l) => ({ ...l }));
  const cherries = copies((l) => l.kind === 'frozen' && l.recipeId === FROZEN_LINE && !l.hold);
  const sheet = sheetFor(cherries[0]?.grade ?? 'perfect');
  const act = seasonAct(s, `${key}-start`, 'start-batch', day, '18:30', { recipe: POWDER_JAM.recipeId });
  const from = { act, taken: new Set([...s.book.lots.values()].map((l) => l.code)) };
  const grams = (name: string) => sheet.doses.find((d) => d.name === name)?.grams ?? 0;
  const of = (item: Parameters<typeof doseItem>[0]) => grams(doseItem(item).name);
  const fruit = drawByWeight(cherries, POWDER_JAM.fruitG, 'frozen sour cherries', from);
  const sugar = drawByWeight(
    copies((l) => l.item === 'sugar'),
    of('sugar'),
    'sugar',
    from,
  );
  const isPowder = (l: HeldLot) => l.item === 'apple-powder' && l.details.state === 'dry';
  const powder = drawByWeight(copies(isPowder), of('apple-powder'), 'apple powder', from);
  const lemonG = of('lemon-juice-bottled');
  const lemonMl = inStockUnit('lemon-juice-bottled', lemonG);
  const lemon = drawOldest(
    held(s, (l) => l.item === 'lemon-juice'),
    lemonMl,
    'lemon juice',
  );
  const lids = drawOldest(
    held(s, (l) => l.item === 'lid-regular'),
    sheet.jars,
    'lids',
  );
  const empties = drawOldest(
    held(s, (l) => l.kind === 'empties' && l.item === POWDER_JAM.jar),
    sheet.jars,
    'jars',
  );
  if (isRefusal(fruit) || isRefusal(sugar) || isRefusal(powder)) return;
  if (isRefusal(lemon) || isRefusal(lids) || isRefusal(empties)) return;
  const lemonParts = splitWhole(
    lemonG,
    lemon.map((d) => d.count),
  );
  const draws: Draw[] = [
    ...fruit.draws,
    ...sugar.draws,
    ...powder.draws,
    ...lemon.map((d, i) => ({ lotId: d.lotId, qty: d.count, grams: lemonParts[i] as number })),
  ];
  const batch = recordOf(s, act.at, day, sheet, cherries[0]?.code ?? '');
  const start = startBatch({ act, batch, draws, waterG: of('water'), household: true });
  const opened = fruit.opened.map(({ onHand: _, ...lot }) => lot);
  const posted = write(s, {
    ...start,
    lots: [...opened, ...start.lots],
    movements: [...fruit.movements, ...start.movements],
  });
  if (!posted) return;
  for (const { lotId, qty } of packsGone(fruit)) s.pieces.get(lotId)?.splice(0, qty);
  const filling = fillJars({
    act: seasonAct(s, `${key}-fill`, 'fill', day, '19:20', { code: batch.code }),
    batch,
    panG: sheet.mixG,
    jars: [{ kind: POWDER_JAM.jar, unit: 'jar', count: sheet.jars, netGEach: sheet.jarG ?? 0 }],
    lotKind: 'jars',
    foodId: 'cherry-sour',
    partialG: sheet.partialG,
    partialUseBy: addDays(day, 7),
    losses: {},
    lids,
    empties,
    bestBefore: addDays(day, 365),
    roomId: demoId(s.placeId, 'room', 'stillroom'),
    fridgeRoomId: demoId(s.placeId, 'room', 'kitchen-fridge'),
    household: true,
    process: 'as tested',
    details: { recipe: batch.label },
  });
  if (isRefusal(filling)) throw new RangeError(`demo season: ${filling.refused}`);
  const { at } = filling.act;
  write(s, { ...filling, batchChanges: [{ batchId: batch.id, state: 'cooling', filledAt: at, outAt: at }] });
  for (const lot of filling.lots.filter((l) => l.unit === 'jar'))
    s.pieces.set(
      lot.id,
      Array.from({ length: sheet.jars }, (_, i) => i + 1),
    );
}

/** Packs that left their lot: whole ones into the pan, and the ones that were opened. */
const packsGone = (fruit: { draws: Draw[]; movements: { from: object; qty: number }[] }) => [
  ...fruit.draws.map(({ lotId, qty }) => ({ lotId, qty })),
  ...fruit.movements.flatMap((m) => ('lot' in m.from ? [{ lotId: m.from.lot as string, qty: m.qty }] : [])),
];

/** The set of the cold jars as it was seen. */
export function playPowderJamSet(s: SeasonState, key: string, day: PlainDate): void {
  const batchId = demoId(s.placeId, 'batch', BATCH);
  if (![...s.book.lots.values()].some((l) => l.batchId === batchId && l.kind === 'jars')) return;
  const act = seasonAct(s, key, 'note', day, '20:00', { what: 'set', set: POWDER_JAM.set });
  write(s, {
    act,
    lots: [],
    movements: [],
    changes: [],
    readings: [
      {
        id: `${batchId}:set`,
        batchId,
        kitchenId: null,
        kind: 'set-test',
        day,
        at: act.at,
        value: POWDER_JAM.set * 100,
        unit: 'set',
        instrument: JAR_SET,
        note: null,
      },
    ],
    batchChanges: [{ batchId, addLog: [{ at: act.at, what: 'set of the jars: set' }] }],
  });
}

const HOME = WRENLATCH.kitchens[0];
const PAN = WRENLATCH.pans[0];
const SIZES = new Map<string, string>(WRENLATCH.jarKinds.flatMap((k) => (k.size ? [[k.code, k.size] as const] : [])));

function sheetFor(grade: NonNullable<HeldLot['grade']>): FrozenSheet {
  const recipe = recipeOf(POWDER_JAM.recipeId);
  const jarKind = WRENLATCH.jarKinds.find((k) => k.code === POWDER_JAM.jar);
  if (!jarKind) throw new RangeError(`the demo has no jar ${POWDER_JAM.jar}`);
  const question = {
    recipe,
    fruit: [{ foodId: 'cherry-sour', grams: POWDER_JAM.fruitG, grade, prepared: true }],
    jar: { size: 'half-pint', fillMl: jarSizeOf('half-pint').fillMl, madeForCanning: true },
    kitchen: { altitudeFt: feet(HOME.altitudeM) },
    method: 'boiling-water',
    pan: { litres: PAN.ml / 1000, maxFill: PAN.maxFillPercent / 100, evapGPerMin: PAN.evapGPerMin },
    canners: WRENLATCH.canners.map((c) => ({
      id: c.code,
      method: 'boiling-water' as const,
      jarsPerLoad: Object.fromEntries(Object.entries(c.loads).map(([code, n]) => [SIZES.get(code) ?? code, n])),
      heatUpMin: c.heatUpS / 60,
      reheatMin: c.reheatS / 60,
    })),
    asked: { amounts: { 'apple-powder': POWDER_JAM.powderG } },
    asWritten: false,
    settings: { lossG: WRENLATCH.settings.panLossG, inversionGain: 0 },
  } as const;
  const lots = [{ grams: POWDER_JAM.fruitG }];
  return frozenSheet({ recipe, sheet: batchSheet(question), question, jarKind, lots }, 0);
}

function recordOf(s: SeasonState, at: string, day: PlainDate, sheet: FrozenSheet, cherries: string): BatchRecord {
  const codes = new Set([...s.book.lots.values()].map((l) => l.code));
  let n = 0;
  while (codes.has(`${batchCode(day, 'SCH', n)}/pan`)) n++;
  const recipe = recipeOf(POWDER_JAM.recipeId);
  return {
    id: demoId(s.placeId, 'batch', BATCH),
    code: batchCode(day, 'SCH', n),
    recipeId: recipe.id,
    label: recipe.title,
    kitchenId: demoId(s.placeId, 'kitchen', HOME.code),
    panCode: PAN.code,
    state: 'cooking',
    day,
    startedAt: at,
    filledAt: null,
    outAt: null,
    formulaVersion: FORMULA_VERSION,
    inputs: { lots: [{ code: cherries, grams: POWDER_JAM.fruitG }], jarKind: POWDER_JAM.jar, waterC: null },
    result: sheet as unknown as Record<string, unknown>,
    log: [{ at, what: 'burner lit' }],
  };
}
