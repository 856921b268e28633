/** What a change would do, season by season on the same drawn seasons: a few changes a household thinks of in winter. */
import { FAIL_SHARE } from '#lib/forecast/crop-defaults.ts';
import type { Scenario } from '#lib/forecast/scenario.ts';
import type { Draws } from '#lib/forecast/season-draws.ts';
import { USABLE_SHARE } from '#lib/forecast/space.ts';
import { type Change, compareAll, type Lever } from '#lib/forecast/what-if.ts';
import type { ForecastInput } from './season-scenario.ts';

export interface WhatIf {
  id: string;
  title: string;
  /** What is taken to change, with the figures it rests on. */
  means: string;
  figures: WhatIfFigure[];
}
export interface WhatIfFigure {
  name: string;
  before: number;
  mean: number;
  se: number;
  clear: boolean;
  moved: boolean;
}

const SHOWN = ['made', 'used', 'unmet', 'expired', 'fruitLostKg', 'sugarKg', 'over shelf', 'over freezer'];
/** Blossom that opens early enough to be caught by a late frost. Common practice. */
const EARLY_BLOSSOM = ['plum', 'damson', 'mirabelle', 'greengage', 'cherry', 'apricot', 'peach', 'nectarine', 'pear'];
const GIVEN = 20;
const TREES = 2;
/** Where no freezer is on record, a small chest; litres. Estimate. */
const CHEST_L = 200;

interface Tried {
  id: string;
  title: string;
  means: string;
  lever: Lever;
}

/** Each change against the season as it is, on the same draws. */
export function whatIfs(input: ForecastInput, scenario: Scenario, draws: Draws): WhatIf[] {
  const tried = [
    moreShelf(input),
    secondFreezer(input),
    jarsGiven(input),
    treesPlanted(input),
    lateFrost(input),
    noMoreSugar(input),
  ].filter((t) => t !== null);
  const changes = compareAll(
    scenario,
    tried.map((t) => t.lever),
    draws,
  );
  return tried.map(({ id, title, means }, i) => ({
    id,
    title,
    means,
    figures: SHOWN.flatMap((name): WhatIfFigure[] => {
      const c = changes[i]?.[name];
      return c ? [figureOf(name, c)] : [];
    }),
  }));
}

const figureOf = (name: string, { before, mean, se, clear, moved }: Change): WhatIfFigure => ({
  name,
  before: Number(before.toFixed(3)),
  mean: Number(mean.toFixed(3)),
  se: Number(se.toFixed(4)),
  clear,
  moved,
});

const withStore =
  (kind: string, more: number) =>
  (sc: Scenario): Scenario => ({
    ...sc,
    stores: sc.stores.map((s) => (s.id === kind ? { ...s, capacity: s.capacity + more } : s)),
  });

function moreShelf(input: ForecastInput): Tried | null {
  const shelf = input.scenario.stores.find((s) => s.id === 'shelf');
  if (!shelf || !(shelf.capacity > 0)) return null;
  return {
    id: 'shelf',
    title: 'One more shelf',
    means: `${input.boardCm} cm more of front, as long as the others`,
    lever: { scenario: withStore('shelf', input.boardCm) },
  };
}

function secondFreezer(input: ForecastInput): Tried | null {
  const litres = input.largestFreezerL ?? CHEST_L;
  return input.scenario.stores.some((s) => s.id === 'freezer' && s.capacity > 0)
    ? {
        id: 'freezer',
        title: 'Another freezer',
        means: `${litres} l more, of which ${USABLE_SHARE * 100} % can be filled (from memory)`,
        lever: { scenario: withStore('freezer', litres * USABLE_SHARE) },
      }
    : null;
}

/** From the line that would have most left at its next harvest. */
function jarsGiven(input: ForecastInput): Tried | null {
  const most = input.lines
    .map((l, i) => ({ l, i, left: l.onHand - l.wantedPerWeek * l.toWeek }))
    .filter(({ l }) => l.onHand >= GIVEN && l.inGlass)
    .sort((a, b) => b.left - a.left)[0];
  if (!most) return null;
  const gift = { id: 'what if given', week: 0, product: most.i, mean: GIVEN, fixed: true, returnProb: 0.4 };
  return {
    id: 'given',
    title: `${GIVEN} jars of ${most.l.line.toLowerCase()} given away`,
    means: 'Now, from the line with most left over; four of ten such jars come back',
    lever: { scenario: (sc) => ({ ...sc, events: [...sc.events, gift] }) },
  };
}

/** Two more trees of the fruit whose line is missed most, as if they bore this year. */
function treesPlanted(input: ForecastInput): Tried | null {
  const short = input.lines
    .map((l, i) => ({ l, pool: input.scenario.products[i]?.crop ?? -1, lack: l.wantedPerWeek * l.toWeek - l.onHand }))
    .filter(({ l, pool }) => l.inGlass && treesOf(input, pool).length > 0)
    .sort((a, b) => b.lack - a.lack)[0];
  if (!short) return null;
  const trees = treesOf(input, short.pool);
  const all = (input.pools[short.pool]?.crops ?? []).map((c) => input.crops[c]).filter((c) => c !== undefined);
  const kept = all.reduce((kg, c) => kg + c.expectedKg * c.keptShare, 0);
  const tree = trees[0];
  if (!tree || !(kept > 0)) return null;
  const each = (tree.expectedKg * tree.keptShare) / tree.count;
  const factor = 1 + (TREES * each) / kept;
  return {
    id: 'trees',
    title: `${TREES} more trees of ${tree.label.toLowerCase()}`,
    means: `As if they bore already, ${Math.round(tree.expectedKg / tree.count)} kg each; young trees take years`,
    lever: { cropScale: input.pools.map((_, i) => (i === short.pool ? factor : 1)) },
  };
}
const treesOf = (input: ForecastInput, pool: number) =>
  (input.pools[pool]?.crops ?? []).flatMap((c) => {
    const crop = input.crops[c];
    return crop && crop.unit === 'tree' && crop.count > 0 ? [crop] : [];
  });

function lateFrost(input: ForecastInput): Tried | null {
  const hit = input.pools.map(
    (p) => p.crops.length > 0 && p.nextWeek > 0 && EARLY_BLOSSOM.some((name) => p.foodId.startsWith(name)),
  );
  if (!hit.some(Boolean)) return null;
  return {
    id: 'frost',
    title: 'A late frost',
    means: `Plums, cherries and pears bring ${FAIL_SHARE * 100} % of their crop (from memory, weak)`,
    lever: { cropScale: hit.map((h) => (h ? FAIL_SHARE : 1)) },
  };
}

const noMoreSugar = (input: ForecastInput): Tried => ({
  id: 'sugar',
  title: 'No more sugar',
  means: `Only the ${(input.sugarOnHandG / 1000).toFixed(1)} kg on hand`,
  lever: { scenario: (sc) => ({ ...sc, sugarLimitKg: input.sugarOnHandG / 1000 }) },
});
