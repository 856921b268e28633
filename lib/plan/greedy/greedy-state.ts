/** What is left of everything while the greedy plan is being made, and what has been decided so far. */
import type {
  FruitGrade,
  PlanCrop,
  PlanInstance,
  PlanLot,
  PlanMaterial,
  PlanProduct,
  StoragePlace,
} from '../instance.ts';
import type { CookedBatches, Plan } from '../plan.ts';
import { gradeOn, isThere, usableShare } from '../usable-fruit.ts';

export interface GreedyRule {
  /** Only batches that use what perishes first, while there are any. */
  urgentFirst: boolean;
  /** Money below which a batch is not worth it. */
  leastNet: number;
  /** Rank by money per hour of hands, else by money. */
  perHour: boolean;
  /** Sell fresh before cooking. */
  sellFirst: boolean;
  /** A recipe of which one batch is cooked on the first day it fits, paying or not. */
  must?: string;
}

export interface FruitOnHand {
  lot: PlanLot;
  grade: FruitGrade;
  /** Usable kg today. */
  kg: number;
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] extends readonly (infer E)[] ? E[] : T[K] };

export class GreedyState {
  readonly plan: Mutable<Plan> = {
    draws: [],
    wasted: [],
    carried: [],
    outlets: [],
    fruit: [],
    cooked: [],
    pectin: [],
    acid: [],
    jars: [],
    tails: [],
    dried: [],
    bought: [],
  };
  readonly lotKg: Map<string, number>;
  readonly hands: number[];
  readonly overtime: number[];
  readonly burner: number[];
  readonly loads: number[];
  readonly trays: number[];
  readonly freeze: number[];
  readonly vessels: Map<string, number[]>;
  readonly litres = new Map<string, number>();
  readonly room: Map<StoragePlace, number[]>;
  readonly setUps = new Set<string>();
  readonly batches = new Map<string, number>();
  readonly fresh = new Map<string, number>();
  /** Stock at the end of each day as decided so far, before further purchases. */
  readonly stock: Map<string, number[]>;
  /** Products made so far. */
  readonly kinds = new Set<string>();
  private readonly buyRoom: Map<string, Map<number, number>>;
  /** Of each crop, soonest to perish first. */
  private readonly lotsOf = new Map<string, PlanLot[]>();
  private readonly crops: Map<string, PlanCrop>;
  private readonly products: Map<string, PlanProduct>;
  private readonly productOf: Map<string, string>;

  constructor(readonly p: PlanInstance) {
    for (const l of [...p.lots].sort((a, b) => a.useBy - b.useBy))
      this.lotsOf.set(l.crop, [...(this.lotsOf.get(l.crop) ?? []), l]);
    this.crops = new Map(p.crops.map((c) => [c.id, c]));
    this.products = new Map(p.products.map((x) => [x.id, x]));
    this.productOf = new Map(p.recipes.map((r) => [r.id, r.product]));
    this.lotKg = new Map(p.lots.map((l) => [l.id, l.kg]));
    this.hands = p.days.map((d) => d.active);
    this.overtime = p.days.map((d) => d.overtime);
    this.burner = p.days.map((d) => d.burner);
    this.loads = p.days.map((d) => d.cannerLoads);
    this.trays = p.days.map((d) => d.dryer);
    this.freeze = p.days.map((d) => d.freezeKg ?? Infinity);
    this.vessels = new Map(p.vessels.map((v) => [v.id, p.days.map((d) => v.count * (d.vesselH?.[v.id] ?? 24))]));
    this.room = new Map(p.storage.map((s) => [s.place, [...s.free]]));
    this.stock = new Map(p.materials.map((m) => [m.id, stockByDay(p, m)]));
    this.buyRoom = new Map(
      p.materials.map((m) => [
        m.id,
        new Map(
          p.days.flatMap((_, t) =>
            m.price !== undefined && (m.shopDays?.includes(t) ?? true) ? [[t, m.maxBuy ?? Infinity] as const] : [],
          ),
        ),
      ]),
    );
  }

  /** Usable fruit of a crop today, soonest to perish first. */
  onHand(crop: string, day: number): FruitOnHand[] {
    return (this.lotsOf.get(crop) ?? [])
      .filter((l) => isThere(l, day) && (this.lotKg.get(l.id) ?? 0) > 1e-9)
      .map((lot) => ({ lot, grade: gradeOn(lot, day), kg: (this.lotKg.get(lot.id) ?? 0) * usableShare(lot, day) }));
  }

  /** Takes usable kg from a lot. */
  draw(lot: PlanLot, day: number, usable: number): void {
    const kg = Math.min(this.lotKg.get(lot.id) ?? 0, usable / usableShare(lot, day));
    this.lotKg.set(lot.id, Math.max(0, (this.lotKg.get(lot.id) ?? 0) - kg));
    this.plan.draws.push({ lot: lot.id, day, kg });
  }

  /** How much of a material could be used on a day, from stock and from shop days up to it. */
  available(id: string, day: number): number {
    const shops = [...(this.buyRoom.get(id) ?? [])].filter(([t]) => t <= day).reduce((n, [, room]) => n + room, 0);
    return Math.max(0, this.onShelf(id, day)) + shops;
  }

  /** What may be taken without buying and without robbing a later day. */
  onShelf(id: string, day: number): number {
    return Math.max(0, Math.min(Infinity, ...(this.stock.get(id) ?? [0]).slice(day)));
  }

  /** Money for using so much: what must be bought, and what is no longer kept. */
  costOf(m: PlanMaterial, day: number, amount: number): number {
    const fromShelf = Math.min(amount, this.onShelf(m.id, day));
    const left = this.onShelf(m.id, day);
    const valued = (x: number) => (m.keepValue ?? 0) * Math.min(x, m.carryMax ?? Infinity);
    return (amount - fromShelf) * (m.price ?? 0) + valued(left) - valued(left - fromShelf);
  }

  use(id: string, day: number, amount: number): void {
    let missing = amount - this.onShelf(id, day);
    const shops = [...(this.buyRoom.get(id) ?? [])].filter(([t]) => t <= day).sort(([a], [b]) => b - a);
    for (const [t, room] of shops) {
      const part = Math.min(missing, room);
      if (part <= 1e-12) continue;
      missing -= part;
      this.buyRoom.get(id)?.set(t, room - part);
      this.plan.bought.push({ material: id, day: t, amount: part });
      this.shift(id, t, part);
    }
    this.shift(id, day, -amount);
  }

  /** Adds to the stock of a day and all later ones. */
  shift(id: string, day: number, amount: number): void {
    const list = this.stock.get(id) ?? [];
    for (let t = day; t < list.length; t++) list[t] = (list[t] as number) + amount;
  }

  product(id: string): PlanProduct | undefined {
    return this.products.get(id);
  }

  crop(id: string): PlanCrop | undefined {
    return this.crops.get(id);
  }

  addCooked(line: CookedBatches): void {
    this.kinds.add(this.productOf.get(line.recipe) ?? '');
    const at = this.plan.cooked.findIndex(
      (c) => c.recipe === line.recipe && c.mode === line.mode && c.day === line.day,
    );
    const known = this.plan.cooked[at];
    if (!known) {
      this.plan.cooked.push(line);
      return;
    }
    const counts = new Map(known.batches.map((b) => [b.loads, b.count]));
    for (const b of line.batches) counts.set(b.loads, (counts.get(b.loads) ?? 0) + b.count);
    this.plan.cooked[at] = {
      ...known,
      kg: known.kg + line.kg,
      batches: [...counts].map(([loads, count]) => ({ loads, count })),
    };
  }

  finish(): Plan {
    for (const l of this.p.lots) {
      const kg = this.lotKg.get(l.id) ?? 0;
      if (kg > 1e-9) (l.useBy >= this.p.horizon ? this.plan.carried : this.plan.wasted).push({ lot: l.id, kg });
    }
    return this.plan;
  }
}

function stockByDay(p: PlanInstance, m: PlanMaterial): number[] {
  let stock = m.stock;
  return p.days.map((_, t) => {
    stock += (m.arrivals ?? []).filter((a) => a.day === t).reduce((n, a) => n + a.amount, 0);
    return stock;
  });
}
