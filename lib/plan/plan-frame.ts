/**
 * One possible future of the instance while its model is written: the data, the switches, and the columns found by
 * their trade name. Columns that all futures share (batches, set-ups, loads and purchases of the first days) exist once.
 */
import type { PlanInstance, PlanMaterial, PlanRecipe } from './instance.ts';
import type { KitchenSlot } from './kitchen-slots.ts';
import type { LotClass } from './lot-classes.ts';
import type { ModelBuilder, Term } from './model-builder.ts';
import type { ColumnKind, ColumnRef } from './sparse-model.ts';
import type { Tightenings } from './tightenings.ts';

export interface FrameSetup {
  builder: ModelBuilder;
  data: PlanInstance;
  tightenings: Tightenings;
  classes: readonly LotClass[];
  slots: readonly KitchenSlot[];
  future: number;
  probability: number;
  firstStageDays: number;
  /** Shortages, underfill and lacking material have columns: with pins, forced recipes or several futures. */
  forgiving: boolean;
  wholeJars: boolean;
}

const SHARED: readonly ColumnKind[] = ['batches', 'loads', 'setUp', 'buy'];

export interface ColumnKey {
  kind: ColumnKind;
  ids: readonly string[];
  day?: number;
  loads?: number;
}

export class PlanFrame {
  readonly data: PlanInstance;
  readonly days: readonly number[];
  private readonly byId = new Map<string, unknown>();

  constructor(readonly setup: FrameSetup) {
    this.data = setup.data;
    this.days = Array.from({ length: setup.data.horizon }, (_, t) => t);
    for (const r of this.data.recipes) this.byId.set(`recipe ${r.id}`, r);
    for (const m of this.data.materials) this.byId.set(`material ${m.id}`, m);
  }

  private ref(key: ColumnKey): ColumnRef {
    const shared = SHARED.includes(key.kind) && key.day !== undefined && key.day < this.setup.firstStageDays;
    return {
      kind: key.kind,
      ids: key.ids,
      day: key.day ?? null,
      loads: key.loads ?? 0,
      future: shared ? 0 : this.setup.future,
    };
  }

  add(key: ColumnKey, bounds: { lower?: number; upper?: number; whole?: boolean } = {}): number {
    return this.setup.builder.column(this.ref(key), bounds);
  }

  /** The terms of a column, none when it does not exist. */
  term(key: ColumnKey, factor: number): Term[] {
    const column = this.setup.builder.find(this.ref(key));
    return column === undefined ? [] : [[column, factor]];
  }

  has(key: ColumnKey): boolean {
    return this.setup.builder.find(this.ref(key)) !== undefined;
  }

  row(
    at: { rule: string; ids?: readonly string[]; day?: number; lower?: number; upper?: number },
    terms: readonly Term[],
  ): void {
    this.setup.builder.row(
      {
        rule: at.rule,
        ids: at.ids ?? [],
        day: at.day ?? null,
        lower: at.lower ?? -Infinity,
        upper: at.upper ?? Infinity,
        future: this.setup.future,
      },
      terms,
    );
  }

  /** Adds money per unit to a group of the objective, weighed by the future's probability. */
  price(group: string, terms: readonly Term[], money: number): void {
    for (const [column, factor] of terms)
      this.setup.builder.price(group, column, factor * money * this.setup.probability);
  }

  recipe(id: string): PlanRecipe {
    return this.byId.get(`recipe ${id}`) as PlanRecipe;
  }

  material(id: string): PlanMaterial {
    return this.byId.get(`material ${id}`) as PlanMaterial;
  }

  slotsOn(recipe: string, day: number): readonly KitchenSlot[] {
    return this.slotIndex.get(`${recipe} ${day}`) ?? [];
  }

  private get slotIndex(): ReadonlyMap<string, readonly KitchenSlot[]> {
    this.slotMap ??= this.setup.slots.reduce((map, s) => {
      const key = `${s.recipe.id} ${s.day}`;
      return map.set(key, [...(map.get(key) ?? []), s]);
    }, new Map<string, KitchenSlot[]>());
    return this.slotMap;
  }
  private slotMap: Map<string, KitchenSlot[]> | undefined;

  /** Recipe-days on which something could be cooked. */
  get kitchenDays(): { recipe: PlanRecipe; day: number }[] {
    return [...this.slotIndex.values()].map((s) => ({
      recipe: (s[0] as KitchenSlot).recipe,
      day: (s[0] as KitchenSlot).day,
    }));
  }
}
