import { describe, expect, it } from 'vitest';
import { batchOfCode } from '#lib/store/batch-store.ts';
import { lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { readCard } from '#lib/usecases/read-card.ts';
import { readReports, readSuspect } from '#lib/usecases/read-suspect.ts';
import { reportJar } from '#lib/usecases/report-jar.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { demoContext, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';

const open = demoOn('2025-12-12');
const report = (n: number, code: string) => ({ id: `suspect-${n}-00`, code, sign: 'mould' as const });

describe('a mouldy jar in December (story B3)', () => {
  it('lists the five sisters with their places, also of a jar that left the house long ago', async () => {
    const ctx = await demoContext(await open());
    const before = await readSuspect(ctx, '25193-ras-a/04');
    expect(before?.sign).toBeNull();
    expect(before?.sisters.map((s) => s.code)).toEqual([1, 2, 3, 5, 6].map((n) => `25193-RAS-A/0${n}`));
    expect(before?.where).toBe('4 sold, 1 eaten');
    expect(doneOf(await reportJar(ctx, report(1, '25193-ras-a/4'))).said).toContain('it had left the house');
    const after = await readSuspect(ctx, '25193-RAS-A/04');
    expect(after?.sign).toBe('Mould');
    expect(after?.held).toBeNull();
    expect(after?.calls.map((c) => c.where)).toEqual(
      ['13 Sep', '16 Aug', '30 Aug', '6 Sep'].map((day) => `sold, the stall, Sat ${day} 2025`),
    );
  });

  it('is thrown away whole where it is still here; one alone holds nothing', async () => {
    const ctx = await demoContext(await open());
    const lot = await lotOfCode(ctx.db, DEMO_PLACE, '25209-RAS-A');
    const view = await readSuspect(ctx, '25209-RAS-A');
    const [jar] = (view?.here[0]?.jars ?? []) as [string];
    expect(doneOf(await reportJar(ctx, report(2, jar))).said).toBe(`${jar} is written down as thrown away.`);
    expect((await lotOfCode(ctx.db, DEMO_PLACE, '25209-RAS-A'))?.onHand).toBe((lot?.onHand ?? 0) - 1);
    const after = await readSuspect(ctx, jar);
    expect(after?.held).toBeNull();
    expect(after?.place).toBe('thrown away');
    expect((await readCard(ctx, jar))?.card.against).toEqual([]);
    expect((await batchOfCode(ctx.db, DEMO_PLACE, '25209-RAS-A'))?.log.at(-1)?.what).toBe(`${jar} spoiled: Mould`);
    expect(await rebuildBalances(ctx.db, DEMO_PLACE)).toEqual([]);
  });

  it('a second one holds the batch, blocks the sale, and names whom to call', async () => {
    const ctx = await demoContext(await open());
    const [one, two] = (await readSuspect(ctx, '25209-RAS-A'))?.here[0]?.jars ?? [];
    doneOf(await reportJar(ctx, report(3, one as string)));
    expect(doneOf(await reportJar(ctx, report(4, two as string))).said).toContain('That is 2 jars of the batch');
    const view = await readSuspect(ctx, two as string);
    expect(view?.held).toBe('2 or more jars of this batch spoiled');
    expect(view?.here.flatMap((h) => h.jars)).not.toContain(one);
    expect(view?.calls.every((c) => c.where.startsWith('given '))).toBe(true);
    expect(view?.calls.length).toBeGreaterThan(0);
    expect((await readCard(ctx, '25209-RAS-A'))?.card.against[0]).toContain('on hold');
    const sale = { slug: 'raspberry-jam', count: 1, to: 'sold' as const, who: null, person: null, at: null };
    const refused = refusalOf(await takeJars(ctx, { id: 'sell-one-held', lot: '25209-RAS-A', ...sale }));
    expect(refused).toContain('on hold: 2 or more jars of this batch spoiled');
    expect((await readReports(ctx)).map((r) => r.jar)).toEqual([two, one]);
  });

  it('counts one jar once, and says so; replaying the same report changes nothing', async () => {
    const ctx = await demoContext(await open());
    const first = doneOf(await reportJar(ctx, report(5, '25209-RAS-A/05')));
    expect(doneOf(await reportJar(ctx, report(5, '25209-RAS-A/05')))).toEqual(first);
    expect(refusalOf(await reportJar(ctx, report(6, '25209-RAS-A/5')))).toContain('was reported on 2025-12-12 already');
    expect(refusalOf(await reportJar(ctx, report(7, '25209-RAS-A/31')))).toBe('there is no jar 31 in 25209-RAS-A');
    expect(refusalOf(await reportJar(ctx, report(8, '25209-RAS-A')))).toContain('say which of its jars');
    expect(refusalOf(await reportJar(ctx, report(9, 'R-25180-SUG-1/02')))).toContain('not kept by the jar');
    expect((await readSuspect(ctx, '25209-RAS-A'))?.held).toBeNull();
  });
});
