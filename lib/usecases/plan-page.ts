/** The plan page: the answer, the plans side by side, and one of them day by day. Reads only. */

import type { HeldLot } from '#lib/ledger/lot.ts';
import { checkPlan } from '#lib/plan/check-plan.ts';
import type { MoreOf } from '#lib/plan/one-more.ts';
import type { Plan } from '#lib/plan/plan.ts';
import { aimFigure, PLAN_AIMS, type PlanAim, trulyBetter } from '#lib/plan/plan-aims.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, shortDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type PlanAsked, planAsked, planHref, planQuery, timeText } from './plan-asked.ts';
import { type PlanDayView, type PlanTrackView, planDays, planTracks } from './plan-days.ts';
import { NOTHING_LOST_KG, type PlanFacts, planFacts } from './plan-facts.ts';
import { planFigures } from './plan-figures.ts';
import { FIRST_SECONDS, type JobReport, jobReport } from './plan-jobs.ts';
import { type SupplyAfter, supplyAfter } from './plan-supply.ts';
import { wantedInAYear } from './plan-wants.ts';
import { HORIZON, type Proposal, planId, planOf, proposePlan, type WhichPlan, whichPlan } from './propose-plan.ts';
import { recipeHere, recipesHere } from './recipes-here.ts';
import type { LabelledFigure } from './shown-figure.ts';

export interface PlanCardView {
  which: WhichPlan;
  title: string;
  /** What else it does as well as any: "keeps the most fruit". */
  also: string[];
  /** Weeks each line lasts after it, shortest first. */
  supply: SupplyAfter[];
  facts: Omit<PlanFacts, 'plan' | 'check'>;
  gap: number | null;
  /** Worth above the plain plan, in the place's money; null for the plain plan itself. */
  gain: number | null;
  chosen: boolean;
  shown: boolean;
  href: string;
}

export interface PlanPageView {
  answer: string;
  sub: string;
  /** Null: no fruit waits or is coming. */
  plan: {
    hash: string;
    query: string;
    asked: {
      hours: string;
      from: string;
      lids: string;
      keep: { label: string; href: string }[];
      without: { label: string; href: string }[];
    };
    usualHoursToday: number;
    lidsInBook: number;
    /** What one more of each limit would bring, most first. */
    more: { what: string; gain: number; savedKg: number }[];
    /** The next days with a short and a heavy harvest; null when it is not known. */
    firm: { shortKg: number; heavyKg: number; stay: string[]; change: string[] } | null;
    /** The limit of which one more brings most, in a word. */
    tightest: string | null;
    wrong: string | null;
    spoilt: string | null;
    clashes: string[];
    /** Recipes of the fruit that is there or coming and of which nothing is planned. */
    unmade: { id: string; title: string }[];
    cards: PlanCardView[];
    shownTitle: string;
    /** What the figures of the plan that is shown rest on. */
    figures: LabelledFigure[];
    days: PlanDayView[];
    tracks: PlanTrackView[];
    job: JobReport;
    firstSeconds: number;
    searched: { seconds: number; solver: string; status: string } | null;
    /** A chosen plan made for other data than these. */
    earlier: string | null;
  } | null;
}

export async function readPlanPage(ctx: Context, typed: Record<string, unknown>): Promise<PlanPageView> {
  const { asked, wrong } = planAsked(typed);
  const proposal = await proposePlan(ctx, asked);
  if (!proposal)
    return {
      answer: 'Nothing to plan: no fruit waits, and none is expected in the next two weeks',
      sub: 'The plan begins with fruit that was weighed in, or with a crop whose picking time is near.',
      plan: null,
    };
  const [lots, used] = await Promise.all([loadLots(ctx.db, ctx.place.id), wantedInAYear(ctx)]);
  const show = typed.show === undefined ? 'found' : whichPlan(typed.show);
  const cards = cardsOf(ctx, proposal, { asked, show, supply: { lots, used } });
  const more = moreOf(proposal);
  const shown = cards.find((c) => c.shown) ?? (cards[0] as PlanCardView & Pick<PlanFacts, 'plan' | 'check'>);
  const lotCodes = new Map(
    lots.filter((l) => l.kind === 'fruit').map((l) => [l.id, { code: l.code, grams: l.onHand }]),
  );
  const expectedKg = proposal.instance.lots.filter((l) => l.id.startsWith('expected:')).reduce((n, l) => n + l.kg, 0);
  return {
    answer: answerOf(shown, proposal.found !== null),
    sub: `${HORIZON} days from ${shortDate(ctx.today)}: ${(shown.facts.totalKg - expectedKg).toFixed(1)} kg is in the store, ${expectedKg.toFixed(1)} kg for the kitchen is still expected off the trees. Hours and worths are estimates of the book.`,
    plan: {
      hash: proposal.hash,
      query: planQuery(asked),
      asked: {
        hours: asked.hours === null ? '' : String(asked.hours),
        from: asked.from === null ? '' : timeText(asked.from),
        lids: asked.lids === null ? '' : String(asked.lids),
        keep: asked.keep.map((k) => ({
          label: `${k.batches === 0 ? 'No ' : ''}${titleOf(ctx, k.recipe)}, ${shortDate(k.day)}`,
          href: planHref({ ...asked, keep: asked.keep.filter((x) => x !== k) }),
        })),
        without: asked.without.map((w) => ({
          label: titleOf(ctx, w),
          href: planHref({ ...asked, without: asked.without.filter((x) => x !== w) }),
        })),
      },
      usualHoursToday: proposal.instance.days[0]?.active ?? 0,
      lidsInBook: lots
        .filter((l) => l.item === 'lid-regular' && (l.kind === 'supply' || l.kind === 'lids'))
        .reduce((n, l) => n + l.onHand, 0),
      more,
      firm: firmOf(ctx, proposal),
      tightest: more[0] && more[0].gain >= WORTH_SAYING ? LIMIT_WORD[more[0].of] : null,
      wrong,
      spoilt: proposal.spoilt,
      clashes: clashesOf(ctx, shown.facts),
      unmade: unmadeOf(ctx, proposal.instance, shown.plan),
      cards: cards.map(({ plan: _, check: __, ...c }) => c),
      shownTitle: shown.title,
      figures: planFigures(proposal.instance, shown.facts, {
        check: shown.check,
        bound: proposal.found?.bound ?? null,
      }),
      days: planDays(ctx, {
        p: proposal.instance,
        plan: shown.plan,
        asked,
        hours: shown.check.tally.handHours,
        lotCodes,
      }),
      tracks: planTracks(ctx, proposal.instance),
      job: jobReport(ctx.place.id, proposal.hash),
      firstSeconds: FIRST_SECONDS,
      searched: proposal.found
        ? { seconds: Math.round(proposal.found.seconds), solver: proposal.found.solver, status: proposal.found.status }
        : null,
      earlier:
        proposal.chosen && !cards.some((c) => c.chosen)
          ? `The plan you chose on ${shortDate(proposal.chosen.day)} was made for other fruit, stores or hours than these. This one starts from it and moves as little as pays.`
          : null,
    },
  };
}

const titleOf = (ctx: Context, recipe: string): string => recipeHere(ctx.place, recipe)?.title ?? recipe;

const TITLE: Readonly<Record<WhichPlan, string>> = {
  found: 'The best plan found',
  'most-kept': 'Keep the most fruit',
  'least-time': 'Least time in the kitchen',
  'least-bought': 'Fewest things bought',
  'by-hand': 'A careful person’s rule',
};
const ALSO: Readonly<Record<PlanAim, string>> = {
  'most-kept': 'keeps the most fruit',
  'least-time': 'takes the least time',
  'least-bought': 'buys the least',
};

interface CardAsk {
  asked: PlanAsked;
  show: WhichPlan;
  supply: { lots: readonly HeldLot[]; used: ReadonlyMap<string, number> };
}

/** The best found first, then the plans that truly do better in something else; the careful person's last. */
function cardsOf(ctx: Context, p: Proposal, o: CardAsk) {
  const byHandWorth = p.byHand.check.worth.total;
  const bound = p.found?.bound ?? null;
  const { differing, also } = aimsOf(p);
  const list: WhichPlan[] = p.found ? ['found', ...differing, 'by-hand'] : ['by-hand'];
  const show = list.includes(o.show) ? o.show : list[0];
  return list.map((which) => {
    const made = planOf(p, which) as Parameters<typeof planFacts>[1];
    const { plan, check, ...facts } = planFacts(p.instance, made, p.found?.prices ?? []);
    const href = planHref(o.asked);
    return {
      which,
      title: TITLE[which],
      also: which === 'found' ? also : [],
      supply: supplyAfter(p.instance, plan, o.supply),
      facts,
      plan,
      check,
      gap:
        which === 'found'
          ? (p.found?.gap ?? null)
          : bound === null
            ? null
            : Math.max(0, bound - facts.worth) / Math.max(1, Math.abs(facts.worth)),
      gain: which === 'by-hand' ? null : facts.worth - byHandWorth,
      chosen: p.chosen?.id === planId(ctx.place.id, p.hash, which),
      shown: which === show,
      href: which === 'found' ? href : `${href}${href.includes('?') ? '&' : '?'}show=${which}`,
    };
  });
}

/** Which aims have a plan that does truly better in them than the best plan found; the others it meets itself. */
function aimsOf(p: Proposal): { differing: PlanAim[]; also: string[] } {
  const { found } = p;
  if (!found) return { differing: [], also: [] };
  const better = (aim: PlanAim): boolean => {
    const plan = planOf(p, aim);
    if (!plan) return false;
    const figure = aimFigure(p.instance, aim, { plan, check: checkPlan(p.instance, plan) });
    return trulyBetter(figure, aimFigure(p.instance, aim, found));
  };
  const searched = PLAN_AIMS.filter((aim) => planOf(p, aim) !== null);
  return {
    differing: searched.filter(better),
    also: searched.filter((aim) => !better(aim)).map((aim) => ALSO[aim]),
  };
}

const MORE_WORD: Readonly<Record<MoreOf, string>> = {
  hour: 'One more hour today',
  burner: 'One more burner',
  lids: 'A dozen more lids',
  shelf: 'A metre more of shelf',
};
const LIMIT_WORD: Readonly<Record<MoreOf, string>> = {
  hour: 'hours today',
  burner: 'burners',
  lids: 'lids',
  shelf: 'room on the shelf',
};
/** Less than this the search itself may bring or miss. */
export const WORTH_SAYING = 0.5;

const moreOf = (p: Proposal) =>
  [...(p.found?.more ?? [])]
    .sort((a, b) => b.gain - a.gain)
    .map((m) => ({
      of: m.what,
      what: MORE_WORD[m.what],
      gain: m.gain >= WORTH_SAYING ? m.gain : 0,
      savedKg: m.savedKg,
    }));

const kg = (x: number): string => x.toFixed(1);

function answerOf(c: PlanCardView, searched: boolean): string {
  const { facts } = c;
  const who =
    c.which === 'found'
      ? 'The best plan found keeps'
      : c.which !== 'by-hand'
        ? `“${c.title}” keeps`
        : searched
          ? 'The plain plan keeps'
          : 'A plain plan keeps';
  const stop = facts.limit
    ? `; ${facts.limit.words} ${facts.limit.words.endsWith('s') ? 'stop' : 'stops'} more`
    : facts.early
      ? '; most of the rest turns before anybody has kitchen time'
      : facts.lostKg > NOTHING_LOST_KG
        ? '; the rest would bring less than its work'
        : '; nothing is lost';
  return `${who} ${kg(facts.keptKg)} of ${kg(facts.totalKg)} kg${stop}`;
}

/** What a pinned plan overruns, in words with the numbers. */
export const clashesOf = (ctx: Context, f: Pick<PlanFacts, 'clashes'>): string[] =>
  f.clashes.map((c) => {
    const on = c.day === null ? '' : ` on ${shortDate(dayAt(ctx, c.day))}`;
    const title = titleOf(ctx, c.ids[0] ?? '');
    if (c.rule === 'pin' && c.room === 0) return `${title}${on}: not wanted, but planned`;
    if (c.rule === 'pin') return `${title}${on}: ${c.room} to be kept, ${c.used} can be made`;
    if (c.rule === 'least batch')
      return `${title}${on}: ${c.used.toFixed(2)} kg of fruit for batches that need ${c.room.toFixed(2)} kg at least`;
    return `${c.words}${on}: ${Number(c.used.toFixed(2))} wanted, ${Number(c.room.toFixed(2))} there`;
  });
const dayAt = (ctx: Context, day: number) => addDays(ctx.today, day);

/** Batches of the next days that stay whichever way the harvest comes, and what happens to the others. */
function firmOf(ctx: Context, p: Proposal): NonNullable<PlanPageView['plan']>['firm'] {
  const firm = p.found?.firm;
  if (!firm) return null;
  const named = (b: (typeof firm.batches)[number]) => `${titleOf(ctx, b.recipe)}, ${shortDate(dayAt(ctx, b.day))}`;
  const stays = (b: (typeof firm.batches)[number]) => b.short === b.planned && b.heavy === b.planned;
  const words = (n: number) => (n === 0 ? 'none' : counted(n, 'batch', 'batches'));
  return {
    shortKg: firm.shortKg,
    heavyKg: firm.heavyKg,
    stay: firm.batches.filter(stays).map(named),
    change: firm.batches
      .filter((b) => !stays(b))
      .map((b) => `${named(b)}: ${words(b.planned)} planned, ${words(b.short)} if short, ${words(b.heavy)} if heavy`),
  };
}

function unmadeOf(ctx: Context, p: Proposal['instance'], plan: Plan): { id: string; title: string }[] {
  const foods = new Set(ctx.place.crops.filter((c) => p.lots.some((l) => l.crop === c.id)).map((c) => c.foodId));
  const made = new Set(plan.cooked.map((c) => c.recipe));
  return recipesHere(ctx.place)
    .filter((r) => !made.has(r.id) && r.fruits.some((f) => f.foodIds.some((id) => foods.has(id))))
    .map((r) => ({ id: r.id, title: r.title }))
    .sort((a, b) => (a.title < b.title ? -1 : 1));
}
