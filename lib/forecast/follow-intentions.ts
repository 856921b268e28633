// biome-ignore-all lint/style/noNonNullAssertion: positions were checked by checkScenario
import type { KernelTables } from './kernel-tables.ts';
import { MADE, makeBatch } from './make-batch.ts';
import type { SeasonState } from './season-state.ts';

const TINY = 1e-9;
/** Batches one week may hold at most under best-first. */
const MOST_BATCHES = 40;

/** What the kitchen makes in one simulated week beyond its planned batches. */
export function followIntentions(t: KernelTables, st: SeasonState, week: number): void {
  if (t.batchWorth) bestFirst(t, st, { worth: t.batchWorth, week });
  else listOrder(t, st, week);
}

const inReach = (t: KernelTables, st: SeasonState, p: number): boolean => {
  if (t.hoursPerBatch[p]! > st.hoursLeft + TINY) return false;
  const crop = t.crop[p]!;
  return crop < 0 || st.fruit[crop]! >= t.fruitPerBatch[p]! - TINY;
};

/** Down the list: while below target, inside the window, up to the maximum a week. */
function listOrder(t: KernelTables, st: SeasonState, week: number): void {
  for (const i of t.intentions) {
    if (week < i.fromWeek || week > i.toWeek) continue;
    for (let b = 0; b < i.maxBatchesPerWeek && st.total[i.product]! < i.target && inReach(t, st, i.product); b++) {
      if (makeBatch(t, st, { product: i.product, week, planned: false }) !== MADE) break;
    }
  }
}

/**
 * The batch worth most per kitchen hour, again and again. A fixed list lost about a quarter of what was attainable on a
 * toy holding and misjudged what more trees or hours would bring.
 */
function bestFirst(
  t: KernelTables,
  st: SeasonState,
  { worth, week }: { worth: readonly Float32Array[]; week: number },
): void {
  const { candidates } = st;
  let left = 0;
  for (let i = 0; i < t.intentions.length; i++) {
    const p = t.intentions[i]!.product;
    if (inReach(t, st, p)) candidates[left++] = p;
  }
  for (let made = 0; made < MOST_BATCHES && left > 0; ) {
    let best = 0;
    let pick = -1;
    for (let i = 0; i < left; i++) {
      const p = candidates[i]!;
      const table = worth[p]!;
      const value = table[Math.min(table.length - 1, st.total[p]!)]!;
      // Equal worth goes by id, not by position: the order of the products must change nothing.
      if (value > best || (value === best && pick >= 0 && t.products[p]!.id < t.products[candidates[pick]!]!.id)) {
        best = value;
        pick = i;
      }
    }
    if (pick < 0) return;
    const refused = makeBatch(t, st, { product: candidates[pick]!, week, planned: false });
    if (refused === MADE) made++;
    else candidates[pick] = candidates[--left]!;
    // Fruit and hours only shrink within a week: what is out of reach now stays so.
    for (let i = left - 1; i >= 0; i--) if (!inReach(t, st, candidates[i]!)) candidates[i] = candidates[--left]!;
  }
}
