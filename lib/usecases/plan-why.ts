/** "Why not this recipe?": what stops it outright at once, and what it would cost planned again. */
import { Worker } from 'node:worker_threads';
import type { PlanInstance } from '#lib/plan/instance.ts';
import { batchCount } from '#lib/plan/plan.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, shortDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type PlanAsked, planHref, planQuery } from './plan-asked.ts';
import { planFacts } from './plan-facts.ts';
import { clashesOf, WORTH_SAYING } from './plan-page.ts';
import { stopsBefore } from './plan-stops.ts';
import { solveWhy, type WhyInput, type WhySolved } from './plan-why-solve.ts';
import { instanceWith, type Proposal, proposePlan } from './propose-plan.ts';
import { recipeHere } from './recipes-here.ts';
import { converse } from './thread-talk.ts';

export interface WhyView {
  recipe: string;
  answer: string;
  sub: string;
  /** What stops it outright. */
  stops: string[];
  /** Nothing does: what it would cost can be worked out. */
  open: boolean;
  query: string;
  planHref: string;
  /** Left out by the person: the way back. */
  backHref: string | null;
}

/** Null when no such recipe is known here or there is no fruit to plan for. */
export async function readWhy(ctx: Context, asked: PlanAsked, id: string): Promise<WhyView | null> {
  const known = await lookedAt(ctx, asked, id);
  if (!known) return null;
  const { recipe, proposal, stops } = known;
  const batches = plannedOf(proposal)
    .cooked.filter((c) => c.recipe === id)
    .reduce((n, c) => n + batchCount(c), 0);
  const leftOut = asked.without.includes(id);
  return {
    recipe: id,
    answer: leftOut
      ? `You left out ${recipe.title.toLowerCase()}`
      : batches > 0
        ? `${recipe.title}: ${counted(batches, 'batch', 'batches')} planned`
        : stops.length > 0
          ? `${recipe.title} cannot be planned now`
          : `Nothing stops ${recipe.title.toLowerCase()} outright`,
    sub: 'Asked in order: is there fruit, does the gate let it out here, is there something to make it in, a day, and enough to fill.',
    stops,
    open: stops.length === 0 && !leftOut,
    query: planQuery(asked),
    planHref: planHref(asked),
    backHref: leftOut ? planHref({ ...asked, without: asked.without.filter((x) => x !== id) }) : null,
  };
}

/** What planning it again says, line by line, and the way to a plan that keeps it. */
export interface WhyAnswer {
  lines: string[];
  href: string | null;
}

export async function askWhy(ctx: Context, asked: PlanAsked, id: string): Promise<WhyAnswer | { refused: string }> {
  const known = await lookedAt(ctx, asked, id);
  if (!known) return { refused: 'That recipe is not known here, or there is no fruit to plan for.' };
  if (known.stops.length > 0) return { lines: known.stops, href: null };
  const { proposal, instance } = known;
  const plan = plannedOf(proposal);
  const bound = proposal.instance === instance ? (proposal.found?.bound ?? null) : null;
  const solved = await solveApart({ instance, recipe: id, plan, bound });
  return { lines: linesOf(ctx, known.recipe, solved), href: hrefOf(ctx, asked, id, solved) };
}

const plannedOf = (p: Proposal) => p.found?.plan ?? p.byHand.plan;

interface Known {
  recipe: Recipe;
  proposal: Proposal;
  /** With the recipe in it, unless something stops it. */
  instance: PlanInstance;
  stops: string[];
}

async function lookedAt(ctx: Context, asked: PlanAsked, id: string): Promise<Known | null> {
  const recipe = recipeHere(ctx.place, id);
  const kitchen = mainKitchen(ctx.place);
  const proposal = recipe && kitchen ? await proposePlan(ctx, asked) : null;
  if (!recipe || !kitchen || !proposal) return null;
  const inIt = proposal.instance.recipes.some((r) => r.id === id);
  const instance = inIt || asked.without.includes(id) ? proposal.instance : await instanceWith(ctx, asked, id);
  return { recipe, proposal, instance, stops: stopsBefore(ctx, { recipe, kitchen, instance }) };
}

/** Set by the server's bundler, as for the search. */
const bundled = process.env.NEXT_RUNTIME === 'nodejs';

const solveApart = (input: WhyInput): Promise<WhySolved> =>
  bundled
    ? converse<WhyInput, never, WhySolved>(
        new Worker(new URL('./plan-why-thread.ts', import.meta.url)),
        input,
        () => undefined,
      )
    : solveWhy(input);

function linesOf(ctx: Context, recipe: Recipe, s: WhySolved): string[] {
  const name = recipe.title.toLowerCase();
  if (s.loss === null) {
    if (s.day !== null) return [`A batch of ${name} fits by itself; no whole plan with it was found in these seconds.`];
    const clashes = clashesOf(ctx, planFacts(s.instance, s.plan, []));
    return [`No plan can hold a batch of ${name}. With one put in all the same:`, ...clashes];
  }
  const money = Math.abs(s.loss).toFixed(1);
  const told = s.made ? `A plan with ${name}` : `A plan without ${name}`;
  const than = s.loss > 0 ? 'less' : 'more';
  const verdict =
    Math.abs(s.loss) < WORTH_SAYING
      ? `${told} is worth as much.`
      : s.equal
        ? `${told} came out ${money} ${than} worth in some seconds; that lies within what is not proven.`
        : `${told} is worth ${money} ${than}${s.loss > 0 ? '' : ': the search had not found it yet'}.`;
  const titleOf = (id: string) => recipeHere(ctx.place, id)?.title.toLowerCase() ?? id;
  const listed = (sign: 1 | -1) =>
    Object.entries(s.changed)
      .filter(([id, n]) => n * sign > 0 && id !== recipe.id)
      .map(([id, n]) => `${Math.abs(n)} × ${titleOf(id)}`);
  const [less, more] = [listed(-1), listed(1)];
  return [
    verdict,
    ...(s.made && s.day !== null ? [`Its day would be ${shortDate(addDays(ctx.today, s.day))}.`] : []),
    ...(less.length > 0 ? [`It takes the place of ${less.join(', ')}.`] : []),
    ...(more.length > 0 ? [`With it goes ${more.join(', ')}.`] : []),
  ];
}

const hrefOf = (ctx: Context, asked: PlanAsked, recipe: string, s: WhySolved): string | null =>
  s.made && s.day !== null
    ? planHref({ ...asked, keep: [...asked.keep, { recipe, day: addDays(ctx.today, s.day), batches: 1 }] })
    : s.made
      ? null
      : planHref({ ...asked, without: [...asked.without, recipe] });
