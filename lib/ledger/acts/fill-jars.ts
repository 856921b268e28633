/**
 * The pan is emptied: jars, the partial jar (to the fridge), trim, skimmings, what stuck to the pan; the rest left as
 * vapour. Inputs equal outputs to the gram. Refused when more came out than went in.
 */

import type { PlainDate } from '#lib/units/plain-date.ts';
import { type Act, childId, type Entry, type Refusal } from '../entry.ts';
import { type Grade, type Lot, newLot } from '../lot.ts';
import { type Movement, moveGrams, movePieces, type Sink } from '../movement.ts';
import { jarLotId, panLotId } from './start-batch.ts';

export interface Filling {
  act: Act;
  batch: { id: string; code: string; label: string; recipeId: string };
  /** Mass that stands in the pan lot before filling. */
  panG: number;
  jars: { kind: string; unit: 'jar' | 'pack'; count: number; netGEach: number }[];
  lotKind: 'jars' | 'frozen' | 'dried' | 'cold-jars';
  foodId: string | null;
  /** Of fruit packed as it is: the worst of what went in. */
  grade?: Grade | null;
  partialG: number;
  partialUseBy: PlainDate | null;
  losses: Partial<Record<Extract<Sink, 'trim' | 'skimmings' | 'pan-loss' | 'compost'>, number>>;
  /** Trim kept as a set-aside lot instead of thrown. */
  keptTrim?: { lot: Lot; grams: number };
  /** Where the lids and empty jars come from, oldest first. */
  lids: { lotId: string; count: number }[];
  empties: { lotId: string; count: number }[];
  bestBefore: PlainDate | null;
  roomId: string | null;
  fridgeRoomId: string | null;
  household: boolean;
  process: Lot['process'];
  details: Record<string, unknown>;
}

export function fillJars(f: Filling): Entry | Refusal {
  const pan = { lot: panLotId(f.batch.id) };
  const lots = f.jars.filter((j) => j.count > 0).map((j) => jarLot(f, j.kind, j.unit));
  const movements: Movement[] = f.jars
    .filter((j) => j.count > 0)
    .map((j) => ({
      from: pan,
      to: { lot: jarLotId(f.batch.id, j.kind) },
      qty: j.count,
      grams: j.count * j.netGEach,
      piece: null,
    }));
  if (f.partialG > 0) {
    const partial = partialLot(f);
    lots.push(partial);
    movements.push(moveGrams(pan, { lot: partial.id }, f.partialG));
  }
  if (f.keptTrim && f.keptTrim.grams > 0) {
    lots.push(f.keptTrim.lot);
    movements.push(moveGrams(pan, { lot: f.keptTrim.lot.id }, f.keptTrim.grams));
  }
  for (const [sink, g] of Object.entries(f.losses))
    if (g > 0) movements.push(moveGrams(pan, { sink: sink as Sink }, g));
  const out = movements.reduce((sum, m) => sum + (m.grams ?? 0), 0);
  if (out > f.panG)
    return { refused: `${out} g came out of ${f.batch.code} but only ${f.panG} g went in: ${out - f.panG} g too much` };
  if (f.panG > out) movements.push(moveGrams(pan, { sink: 'vapour' }, f.panG - out));
  for (const l of f.lids) if (l.count > 0) movements.push(movePieces({ lot: l.lotId }, { sink: 'used' }, l.count));
  for (const e of f.empties) if (e.count > 0) movements.push(movePieces({ lot: e.lotId }, { sink: 'in-use' }, e.count));
  return {
    act: f.act,
    lots,
    movements,
    changes: [],
    batchChanges: [{ batchId: f.batch.id, state: 'filled', filledAt: f.act.at }],
  };
}

const common = (f: Filling) => ({
  recipeId: f.batch.recipeId,
  batchId: f.batch.id,
  foodId: f.foodId,
  parentActId: f.act.id,
  madeOn: f.act.day,
  since: f.act.at,
  household: f.household,
});

const jarLot = (f: Filling, kind: string, unit: 'jar' | 'pack'): Lot => {
  const many = f.jars.filter((j) => j.count > 0).length > 1;
  return newLot({
    ...common(f),
    id: jarLotId(f.batch.id, kind),
    code: many ? `${f.batch.code}-${kind}` : f.batch.code,
    kind: f.lotKind,
    label: f.batch.label,
    unit,
    item: kind,
    grade: f.grade ?? null,
    roomId: f.roomId,
    bestBefore: f.bestBefore,
    process: f.process,
    seal: f.lotKind === 'jars' ? 'waiting' : null,
    details: { ...f.details, netG: f.jars.find((j) => j.kind === kind)?.netGEach },
  });
};

const partialLot = (f: Filling): Lot =>
  newLot({
    ...common(f),
    id: childId(f.batch.id, 'partial'),
    code: `${f.batch.code}/partial`,
    kind: 'cold-jars',
    label: `${f.batch.label}, partial jar`,
    unit: 'g',
    roomId: f.fridgeRoomId,
    bestBefore: f.partialUseBy,
  });
