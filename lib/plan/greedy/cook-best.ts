/** Finds, among all recipes, vessels and load counts, the greatest batch that fits each, and books the one that pays best. */
import type { PlanRecipe, RecipeMode } from '../instance.ts';
import { segmentWorth } from '../segment-worth.ts';
import { carryWorth } from '../usable-fruit.ts';
import { type FilledPan, fillPan } from './fill-pan.ts';
import type { GreedyRule, GreedyState } from './greedy-state.ts';

interface Candidate {
  recipe: PlanRecipe;
  mode: RecipeMode;
  loads: number;
  pan: FilledPan;
  hours: number;
  net: number;
  urgent: number;
}

/** Books one batch; false when none is worth it any more. */
export function cookBest(s: GreedyState, day: number, rule: GreedyRule): boolean {
  const found = s.p.recipes.flatMap((recipe) =>
    recipe.modes.flatMap((mode) =>
      loadCounts(s, recipe, mode, day).flatMap((loads) => candidate(s, day, { recipe, mode, loads })),
    ),
  );
  const worthIt = found.filter((c) => c.net > rule.leastNet);
  const dying = Math.min(...worthIt.map((c) => c.urgent));
  const nextKitchenDay = s.p.days.findIndex((d, t) => t > day && d.active > 0);
  const first =
    rule.urgentFirst && (nextKitchenDay < 0 || dying < nextKitchenDay)
      ? worthIt.filter((c) => c.urgent === dying)
      : worthIt;
  const rank = (c: Candidate) => (rule.perHour ? c.net / Math.max(0.05, c.hours) : c.net);
  const best = first.reduce<Candidate | null>((a, c) => (a === null || rank(c) > rank(a) + 1e-9 ? c : a), null);
  if (!best) return false;
  book(s, day, best);
  return true;
}

/** Books the batch of one recipe that pays best, paying or not; false when none fits. */
export function cookPinned(s: GreedyState, day: number, pin: { recipe: string; mode?: string }): boolean {
  const recipe = s.p.recipes.find((r) => r.id === pin.recipe);
  const modes = recipe?.modes.filter((m) => pin.mode === undefined || m.id === pin.mode) ?? [];
  const found = recipe
    ? modes.flatMap((mode) =>
        loadCounts(s, recipe, mode, day).flatMap((loads) => candidate(s, day, { recipe, mode, loads })),
      )
    : [];
  const best = found.reduce<Candidate | null>((a, c) => (a === null || c.net > a.net + 1e-9 ? c : a), null);
  if (!best) return false;
  book(s, day, best);
  return true;
}

function loadCounts(s: GreedyState, r: PlanRecipe, m: RecipeMode, day: number): number[] {
  if (!r.canner) return [0];
  const litres = s.p.jars.filter((j) => r.jars?.includes(j.id)).map((j) => j.perLoad * j.litres);
  const most = Math.min(
    Math.floor((s.loads[day] ?? 0) + 1e-9),
    Math.ceil((m.maxKg * r.yieldPerKg) / Math.min(...litres) - 1e-9),
  );
  return Array.from({ length: Math.max(0, most) }, (_, i) => i + 1);
}

function candidate(
  s: GreedyState,
  day: number,
  at: { recipe: PlanRecipe; mode: RecipeMode; loads: number },
): Candidate[] {
  const { recipe, mode, loads } = at;
  const exact = s.p.pins?.find((x) => x.exact && x.recipe === recipe.id && x.day === day);
  if ((s.batches.get(`${recipe.id}|${day}`) ?? 0) >= (exact?.batches ?? recipe.maxBatchesPerDay)) return [];
  const cap = greatestKg(s, day, at);
  if (cap < mode.minKg - 1e-9 || cap <= 1e-6) return [];
  const pan = largestPan(s, { recipe, day, loads, least: Math.max(mode.minKg, 1e-3), most: cap });
  if (!pan) return [];
  const hours = handsFor(s, day, at) + pan.kg * (mode.activePerKg ?? 0);
  return [
    {
      ...at,
      pan,
      hours,
      net: netWorth(s, day, { ...at, pan, hours }),
      urgent: Math.min(...pan.fruit.map((f) => f.from.lot.useBy)),
    },
  ];
}

const handsFor = (s: GreedyState, day: number, at: { recipe: PlanRecipe; mode: RecipeMode; loads: number }): number =>
  (s.setUps.has(`${at.recipe.id}|${day}`) ? 0 : (at.recipe.setupH ?? 0)) +
  at.mode.activeH +
  at.loads * (at.recipe.canner?.activeH ?? 0);

/** What hands, flames, vessel, trays, freezer, room and loads leave for one batch, kg. */
function greatestKg(s: GreedyState, day: number, at: { recipe: PlanRecipe; mode: RecipeMode; loads: number }): number {
  const { recipe: r, mode: m, loads } = at;
  const per = (left: number, each: number) => (left < -1e-9 ? 0 : each > 0 ? Math.max(0, left) / each : Infinity);
  const hands = (s.hands[day] ?? 0) + (s.overtime[day] ?? 0) - handsFor(s, day, at);
  const flames = (s.burner[day] ?? 0) - m.burnerH - loads * (r.canner?.burnerH ?? 0);
  const trays = r.dryer
    ? Math.min(...Array.from({ length: Math.max(1, r.dryer.days) }, (_, i) => s.trays[day + i] ?? Infinity))
    : 0;
  const sizes = s.p.jars.filter((j) => r.jars?.includes(j.id));
  const stored =
    r.yieldPerKg * Math.max(...(sizes.length ? sizes.map((j) => (j.storeLitres ?? j.litres) / j.litres) : [1]));
  const room = Math.min(...(s.room.get(s.product(r.product)?.place ?? 'shelf') ?? [0]).slice(day));
  if (((s.vessels.get(m.vessel) ?? [])[day] ?? 0) < m.vesselH - 1e-9) return 0;
  return Math.min(
    m.maxKg,
    per(hands, m.activePerKg ?? 0),
    per(flames, m.burnerPerKg ?? 0),
    r.dryer ? per(trays, r.dryer.m2PerKg) : Infinity,
    per(s.freeze[day] ?? Infinity, r.freezeKgPerKg ?? 0),
    per(room, stored),
    r.canner ? (loads * Math.max(...sizes.map((j) => j.perLoad * j.litres))) / r.yieldPerKg : Infinity,
  );
}

function largestPan(
  s: GreedyState,
  x: { recipe: PlanRecipe; day: number; loads: number; least: number; most: number },
): FilledPan | null {
  const fruit = x.recipe.fruit.reduce(
    (n, u) =>
      n +
      s
        .onHand(u.crop, x.day)
        .filter((f) => u.grades.includes(f.grade))
        .reduce((m, f) => m + f.kg, 0),
    0,
  );
  let high = Math.min(x.most, fruit);
  if (high < x.least - 1e-9) return null;
  let best = fillPan(s, { ...x, kg: high });
  if (best) return best;
  let low = x.least;
  best = fillPan(s, { ...x, kg: low });
  for (let i = 0; best && i < 9; i++) {
    const kg = (low + high) / 2;
    const pan = fillPan(s, { ...x, kg });
    if (pan) [best, low] = [pan, kg];
    else high = kg;
  }
  return best;
}

function netWorth(
  s: GreedyState,
  day: number,
  c: { recipe: PlanRecipe; mode: RecipeMode; loads: number; pan: FilledPan; hours: number },
): number {
  const product = s.product(c.recipe.product);
  if (!product) return 0;
  const w = s.p.weights;
  const made = s.litres.get(product.id) ?? 0;
  const gain = segmentWorth(product, made + c.pan.kg * c.recipe.yieldPerKg) - segmentWorth(product, made);
  const newKind = s.p.variety && s.kinds.size < s.p.variety.min && !s.kinds.has(product.id) ? s.p.variety.penalty : 0;
  const supplies = [...c.pan.supplies].reduce((n, [id, amount]) => {
    const m = s.p.materials.find((x) => x.id === id);
    return n + (m ? s.costOf(m, day, amount) : 0);
  }, 0);
  const over = Math.max(0, c.hours - (s.hands[day] ?? 0));
  const flames = c.mode.burnerH + c.pan.kg * (c.mode.burnerPerKg ?? 0) + c.loads * (c.recipe.canner?.burnerH ?? 0);
  return gain + newKind - supplies - w.labour * c.hours - w.overtime * over - w.burner * flames + fruitGain(s, c.pan);
}

/** Waste avoided on fruit that cannot wait, less the worth of fruit that could be kept. */
const fruitGain = (s: GreedyState, pan: FilledPan): number =>
  pan.fruit.reduce((n, f) => {
    const crop = s.crop(f.use.crop);
    if (!crop) return n;
    return (
      n +
      f.kg *
        (f.from.lot.useBy >= s.p.horizon
          ? -carryWorth(f.from.lot, crop, s.p.horizon)
          : s.p.weights.waste + (crop.wasteCost ?? 0))
    );
  }, 0);

function book(s: GreedyState, day: number, c: Candidate): void {
  const { recipe: r, mode: m, pan } = c;
  const less = (list: number[] | undefined, t: number, amount: number) => {
    if (list && t < list.length) list[t] = (list[t] as number) - amount;
  };
  for (const f of pan.fruit) {
    s.draw(f.from.lot, day, f.kg);
    s.plan.fruit.push({ recipe: r.id, crop: f.use.crop, grade: f.from.grade, day, kg: f.kg });
    for (const l of (r.leftovers ?? []).filter((x) => x.crop === f.use.crop)) {
      const key = `${l.leftover}|${day}`;
      s.fresh.set(key, (s.fresh.get(key) ?? 0) + l.kgPerKg * f.kg);
    }
  }
  for (const [id, amount] of pan.supplies) s.use(id, day, amount);
  s.plan.pectin.push(...pan.pectin.map((x) => ({ recipe: r.id, day, ...x })));
  s.plan.acid.push(...pan.acid.map((x) => ({ recipe: r.id, day, ...x })));
  s.plan.jars.push(...pan.jars.map((x) => ({ recipe: r.id, day, ...x })));
  s.addCooked({ recipe: r.id, mode: m.id, day, kg: pan.kg, batches: [{ loads: c.loads, count: 1 }] });
  const over = Math.max(0, c.hours - (s.hands[day] ?? 0));
  less(s.hands, day, c.hours - over);
  less(s.overtime, day, over);
  less(s.burner, day, m.burnerH + pan.kg * (m.burnerPerKg ?? 0) + c.loads * (r.canner?.burnerH ?? 0));
  less(s.loads, day, c.loads);
  less(s.freeze, day, pan.kg * (r.freezeKgPerKg ?? 0));
  less(s.vessels.get(m.vessel), day, m.vesselH);
  for (let d = 0; r.dryer && d < Math.max(1, r.dryer.days); d++) less(s.trays, day + d, pan.kg * r.dryer.m2PerKg);
  const litres = pan.jars.length ? pan.jars.reduce((n, j) => n + j.count * sizeOf(s, j.jar), 0) : pan.kg * r.yieldPerKg;
  for (let t = day; t < s.p.horizon; t++) less(s.room.get(s.product(r.product)?.place ?? 'shelf'), t, litres);
  s.litres.set(r.product, (s.litres.get(r.product) ?? 0) + pan.kg * r.yieldPerKg);
  s.setUps.add(`${r.id}|${day}`);
  s.batches.set(`${r.id}|${day}`, (s.batches.get(`${r.id}|${day}`) ?? 0) + 1);
}

const sizeOf = (s: GreedyState, jar: string): number => {
  const j = s.p.jars.find((x) => x.id === jar);
  return j?.storeLitres ?? j?.litres ?? 0;
};
