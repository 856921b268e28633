/** The plan page: the answer, the plans side by side, and one of them day by day. Reads only. */

import { loadLots } from '#lib/store/ledger-store.ts';
import { addDays, shortDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type PlanAsked, planAsked, planHref, planQuery } from './plan-asked.ts';
import { type PlanDayView, type PlanTrackView, planDays, planTracks } from './plan-days.ts';
import { NOTHING_LOST_KG, type PlanFacts, planFacts } from './plan-facts.ts';
import { FIRST_SECONDS, type JobReport, jobReport } from './plan-jobs.ts';
import { HORIZON, type Proposal, planId, proposePlan } from './propose-plan.ts';
import { recipeHere } from './recipes-here.ts';

export interface PlanCardView {
  which: 'found' | 'by-hand';
  title: string;
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
    asked: { hours: string; keep: { label: string; href: string }[]; without: { label: string; href: string }[] };
    usualHoursToday: number;
    wrong: string | null;
    spoilt: string | null;
    clashes: string[];
    cards: PlanCardView[];
    shownTitle: string;
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
  const cards = cardsOf(ctx, proposal, { asked, show: typed.show === 'by-hand' ? 'by-hand' : 'found' });
  const shown = cards.find((c) => c.shown) ?? (cards[0] as PlanCardView & Pick<PlanFacts, 'plan' | 'check'>);
  const lots = await loadLots(ctx.db, ctx.place.id, { kinds: ['fruit'] });
  const lotCodes = new Map(lots.map((l) => [l.id, { code: l.code, grams: l.onHand }]));
  const expectedKg = proposal.instance.lots.filter((l) => l.id.startsWith('expected:')).reduce((n, l) => n + l.kg, 0);
  return {
    answer: answerOf(shown, proposal.found !== null),
    sub: `${HORIZON} days from ${shortDate(ctx.today)}: ${(shown.facts.totalKg - expectedKg).toFixed(1)} kg is in the store, ${expectedKg.toFixed(1)} kg for the kitchen is still expected off the trees. Hours and worths are estimates of the book.`,
    plan: {
      hash: proposal.hash,
      query: planQuery(asked),
      asked: {
        hours: asked.hours === null ? '' : String(asked.hours),
        keep: asked.keep.map((k) => ({
          label: `${titleOf(ctx, k.recipe)}, ${shortDate(k.day)}`,
          href: planHref({ ...asked, keep: asked.keep.filter((x) => x !== k) }),
        })),
        without: asked.without.map((w) => ({
          label: titleOf(ctx, w),
          href: planHref({ ...asked, without: asked.without.filter((x) => x !== w) }),
        })),
      },
      usualHoursToday: proposal.instance.days[0]?.active ?? 0,
      wrong,
      spoilt: proposal.spoilt,
      clashes: clashesOf(ctx, shown.facts),
      cards: cards.map(({ plan: _, check: __, ...c }) => c),
      shownTitle: shown.title,
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

function cardsOf(ctx: Context, p: Proposal, o: { asked: PlanAsked; show: 'found' | 'by-hand' }) {
  const byHandWorth = p.byHand.check.worth.total;
  const bound = p.found?.bound ?? null;
  const isChosen = (which: 'found' | 'by-hand') => p.chosen?.id === planId(ctx.place.id, p.hash, which);
  const card = (which: 'found' | 'by-hand', made: { plan: Parameters<typeof planFacts>[1]; gap: number | null }) => {
    const { plan, check, ...facts } = planFacts(p.instance, made.plan, p.found?.prices ?? []);
    const href = planHref(o.asked);
    return {
      which,
      title: which === 'found' ? 'The best plan found' : 'A careful person’s rule',
      facts,
      plan,
      check,
      gap: made.gap,
      gain: which === 'found' ? facts.worth - byHandWorth : null,
      chosen: isChosen(which),
      shown: which === (p.found ? o.show : 'by-hand'),
      href: which === 'found' ? href : `${href}${href.includes('?') ? '&' : '?'}show=by-hand`,
    };
  };
  const byHand = card('by-hand', {
    plan: p.byHand.plan,
    gap: bound === null ? null : Math.max(0, bound - byHandWorth) / Math.max(1, Math.abs(byHandWorth)),
  });
  return p.found ? [card('found', { plan: p.found.plan, gap: p.found.gap }), byHand] : [byHand];
}

const kg = (x: number): string => x.toFixed(1);

function answerOf(c: PlanCardView, searched: boolean): string {
  const { facts } = c;
  const who =
    c.which === 'found' ? 'The best plan found keeps' : searched ? 'The plain plan keeps' : 'A plain plan keeps';
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
const clashesOf = (ctx: Context, f: Pick<PlanFacts, 'clashes'>): string[] =>
  f.clashes.map((c) => {
    const on = c.day === null ? '' : ` on ${shortDate(dayAt(ctx, c.day))}`;
    const title = titleOf(ctx, c.ids[0] ?? '');
    if (c.rule === 'pin') return `${title}${on}: ${c.room} to be kept, ${c.used} can be made`;
    if (c.rule === 'least batch')
      return `${title}${on}: ${c.used.toFixed(2)} kg of fruit for batches that need ${c.room.toFixed(2)} kg at least`;
    return `${c.words}${on}: ${Number(c.used.toFixed(2))} wanted, ${Number(c.room.toFixed(2))} there`;
  });
const dayAt = (ctx: Context, day: number) => addDays(ctx.today, day);
