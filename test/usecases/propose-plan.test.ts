import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadPlan } from '#lib/store/plan-store.ts';
import { addDays, plainDate } from '#lib/units/plain-date.ts';
import { openContext } from '#lib/usecases/context.ts';
import { openDemo } from '#lib/usecases/open-demo.ts';
import { askedOfQuery, NOTHING_ASKED, planAsked, planQuery } from '#lib/usecases/plan-asked.ts';
import { lotsOfPans } from '#lib/usecases/plan-draws.ts';
import { planFacts } from '#lib/usecases/plan-facts.ts';
import { jobReport, startSearch, stopSearch } from '#lib/usecases/plan-jobs.ts';
import { readPlanPage } from '#lib/usecases/plan-page.ts';
import { chooseProposal, planId, proposePlan } from '#lib/usecases/propose-plan.ts';
import { onSqlite } from '#test/support/database.ts';

const NOW = new Date('2026-01-20T10:00:00Z');

async function opened(db: Db, day: string) {
  await openDemo(db, plainDate(day), NOW);
  const ctx = await openContext(db, 'wrenlatch', NOW);
  assert.ok(ctx);
  return ctx;
}

describe('the plan of the collision weeks', () => {
  onSqlite((open) => {
    for (const day of ['2025-09-01', '2025-09-08']) {
      it(`on ${day}: a plan at once, a better one in ten seconds, both checked, with a proven bound`, async () => {
        const ctx = await opened(await open(), day);
        await proposePlan(ctx, NOTHING_ASKED);
        const began = performance.now();
        const first = await proposePlan(ctx, NOTHING_ASKED);
        const atOnceMs = performance.now() - began;
        assert.ok(first);
        assert.ok(first.byHand.check.doable, JSON.stringify(first.byHand.check.breaches[0]));
        assert.equal(first.found, null);

        const job = await startSearch(ctx, NOTHING_ASKED, 10);
        assert.ok(!('refused' in job), 'the search starts');
        await job.done;
        assert.equal(job.failed, null);
        const after = await proposePlan(ctx, NOTHING_ASKED);
        const found = after?.found;
        assert.ok(after && found, 'the same data find the stored plan');
        assert.equal(after.hash, first.hash);
        const byHand = first.byHand.check.worth.total;
        process.stdout.write(
          `${day}: by hand ${byHand.toFixed(2)} in ${atOnceMs.toFixed(0)} ms; found ${found.worth.toFixed(2)}, gap ${((found.gap ?? 1) * 100).toFixed(2)} %, ${found.status}, ${found.seconds.toFixed(1)} s\n`,
        );
        assert.ok(atOnceMs < 3000, `${atOnceMs} ms`);
        assert.ok(found.worth > byHand + 1, `${found.worth} against ${byHand}`);
        assert.ok(found.check.doable);
        assert.ok(found.bound !== null && found.bound >= found.worth - 1e-6);
        assert.ok(found.gap !== null && found.gap < 0.12, `gap ${found.gap}`);

        const facts = planFacts(after.instance, found.plan, found.prices);
        assert.ok(facts.check.consistent, 'still whole after the jars are rounded');
        for (const [id, days] of facts.check.tally.stock)
          assert.ok(
            days.every((left) => left >= -1e-6),
            `${id} goes below nothing`,
          );
        assert.ok(
          [...facts.check.tally.lack.values()].every((days) => days.every((x) => x < 1e-6)),
          'nothing is used that is not there',
        );
        const made = facts.plan.jars.reduce((n, j) => n + j.count, 0);
        assert.ok(Math.abs(made - Math.round(made)) < 1e-6, 'whole jars');
        const total = after.instance.lots.reduce((n, l) => n + l.kg, 0);
        assert.ok(Math.abs(facts.keptKg + facts.lostKg - total) < 1e-6);

        const stored = await loadPlan(ctx.db, ctx.place.id, planId(ctx.place.id, after.hash, 'found'));
        assert.deepEqual(stored?.snapshot, JSON.parse(JSON.stringify(after.instance)));
        assert.equal(stored?.options.inputHash, after.hash);
        assert.match(stored?.solver ?? '', /^HiGHS/);
      }, 120_000);
    }

    it('draws for its pans exactly what it draws from the lots for them', async () => {
      const ctx = await opened(await open(), '2025-09-08');
      const p = await proposePlan(ctx, NOTHING_ASKED);
      assert.ok(p);
      const { plan } = p.byHand;
      const drawn = plan.draws.reduce((n, d) => n + d.kg, 0);
      const panned = [...lotsOfPans(p.instance, plan).values()].flat().reduce((n, l) => n + l.kg, 0);
      assert.ok(plan.outlets.length === 0 && Math.abs(drawn - panned) < 1e-3, `${drawn} drawn, ${panned} in pans`);
    }, 60_000);

    it('is chosen with one tap, and refused once the data have changed', async () => {
      const ctx = await opened(await open(), '2025-09-08');
      const p = await proposePlan(ctx, NOTHING_ASKED);
      assert.ok(p);
      assert.deepEqual(await chooseProposal(ctx, NOTHING_ASKED, { hash: p.hash, which: 'by-hand' }), {
        said: 'This is the plan to go by now.',
      });
      const page = await readPlanPage(ctx, {});
      assert.deepEqual(
        page.plan?.cards.map((c) => [c.which, c.chosen]),
        [['by-hand', true]],
      );
      await ctx.db.lot.updateMany({ where: { placeId: ctx.place.id, item: 'sugar' }, data: { onHand: 100 } });
      const late = await chooseProposal(ctx, NOTHING_ASKED, { hash: p.hash, which: 'by-hand' });
      assert.ok('refused' in late);
      const next = await openContext(ctx.db, 'wrenlatch', NOW);
      assert.ok(next);
      const tomorrow = await proposePlan({ ...next, today: addDays(next.today, 1) }, NOTHING_ASKED);
      assert.ok((tomorrow?.instance.former?.batches.length ?? 0) > 0, 'tomorrow is planned from what was chosen today');
    }, 60_000);

    it('answers a batch that cannot be kept with the limits it breaks, not with an empty page', async () => {
      const ctx = await opened(await open(), '2025-09-01');
      const keep = `crabapple-jelly@${addDays(ctx.today, 1)}*9`;
      const page = await readPlanPage(ctx, { keep });
      assert.ok(page.plan);
      assert.ok(page.plan.cards.length > 0);
      assert.ok(
        page.plan.clashes.some((c) => /Crabapple jelly/.test(c)),
        page.plan.clashes.join('; '),
      );
    }, 60_000);

    it('swaps a batch for another recipe of its fruit on that day', async () => {
      const ctx = await opened(await open(), '2025-09-01');
      const days = (await readPlanPage(ctx, {})).plan?.days ?? [];
      const day = days.find((d) => d.batches.some((b) => b.swaps.length > 0));
      const batch = day?.batches.find((b) => b.swaps.length > 0);
      const swap = batch?.swaps[0];
      assert.ok(day && batch && swap);
      const asked = askedOfQuery(new URL(swap.href, 'http://house').search);
      const other = asked.keep.find((k) => k.batches > 0);
      assert.ok(other && other.recipe !== batch.recipe && other.day === day.day);
      const after = await proposePlan(ctx, asked);
      const made = after?.byHand.plan.cooked.filter((c) => addDays(ctx.today, c.day) === day.day).map((c) => c.recipe);
      assert.ok(made?.includes(other.recipe), made?.join(' '));
      assert.ok(!made?.includes(batch.recipe), made?.join(' '));
    }, 60_000);

    it('leaves out what a person does not want, and says so', async () => {
      const ctx = await opened(await open(), '2025-09-01');
      const before = await proposePlan(ctx, NOTHING_ASKED);
      const unwanted = before?.byHand.plan.cooked[0]?.recipe ?? '';
      const after = await proposePlan(ctx, { ...NOTHING_ASKED, without: [unwanted] });
      assert.ok(after && after.hash !== before?.hash);
      assert.ok(after.byHand.plan.cooked.every((c) => c.recipe !== unwanted));
    }, 60_000);

    it('links today’s batches to the weighing with recipe, lots and kilograms no lot exceeds', async () => {
      const ctx = await opened(await open(), '2025-09-08');
      const page = await readPlanPage(ctx, { hours: '4' });
      const today = page.plan?.days.find((d) => d.today);
      const hrefs = today?.batches.flatMap((b) => (b.weighHref ? [b.weighHref] : [])) ?? [];
      assert.ok(hrefs.length > 0);
      for (const href of hrefs) {
        const q = new URL(href, 'http://house').searchParams;
        const lots = await ctx.db.lot.findMany({ where: { id: { in: q.getAll('lot') } } });
        assert.equal(q.getAll('lot').length, q.getAll('kg').length);
        q.getAll('lot').forEach((id, i) => {
          assert.ok(Number(q.getAll('kg')[i]) * 1000 <= (lots.find((l) => l.id === id)?.onHand ?? 0) + 1e-6);
        });
      }
    }, 60_000);

    it('says that nothing is there to plan when no fruit waits or is coming', async () => {
      const ctx = await opened(await open(), '2025-02-20');
      await ctx.db.lot.updateMany({ where: { placeId: ctx.place.id, kind: 'fruit' }, data: { onHand: 0 } });
      const page = await readPlanPage(ctx, {});
      assert.equal(page.plan, null);
      assert.match(page.answer, /no fruit waits/);
      assert.ok('refused' in (await startSearch(ctx, NOTHING_ASKED, 1)));
    }, 60_000);
  });
});

describe('a search', () => {
  it('that nobody started is unknown and cannot be stopped', () => {
    assert.equal(jobReport('nowhere', 'x').state, 'unknown');
    assert.equal(stopSearch('nowhere', 'x'), false);
  });
});

describe('what a person asks of the plan', () => {
  it('is one address however it is put', () => {
    const { asked } = planAsked({
      hours: '2,5',
      from: '20:30',
      lids: '9',
      keep: ['plum-jam@2025-09-02*1', 'plum-butter@2025-09-02*0', 'nonsense'],
      without: ['apple-butter', 'apple-butter'],
    });
    assert.deepEqual(asked, {
      hours: 2.5,
      from: 1230,
      lids: 9,
      keep: [
        { recipe: 'plum-jam', day: '2025-09-02', batches: 1 },
        { recipe: 'plum-butter', day: '2025-09-02', batches: 0 },
      ],
      without: ['apple-butter'],
    });
    assert.equal(planQuery(askedOfQuery(planQuery(asked))), planQuery(asked));
  });
  it('names hours out of range and plans by the week instead', () => {
    const { asked, wrong } = planAsked({ hours: '30', from: '25:00', lids: '2.5' });
    assert.deepEqual([asked.hours, asked.from, asked.lids], [null, null, null]);
    assert.match(wrong ?? '', /0 to 24.*20:30.*whole number/);
  });
});
