/** What the pages of the demo's last day rest on: pantry, lines, traces, set-asides, stores. */
import { describe, expect, it } from 'vitest';
import { loadLots } from '#lib/store/ledger-store.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { lineSlug, readLine, readPantry, suggestAddress } from '#lib/usecases/read-pantry.ts';
import { readPlace } from '#lib/usecases/read-place.ts';
import { readSetAsides } from '#lib/usecases/read-set-asides.ts';
import { readTrace, searchCodes, splitCode } from '#lib/usecases/read-trace.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { traceCards } from '#lib/usecases/trace-cards.ts';
import { demoContext, demoOn, doneOf } from '#test/support/demo-database.ts';

const open = demoOn('2026-01-15');
const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

describe('the pantry in January', () => {
  it('shows every jar once: on a shelf, on the floor or waiting', async () => {
    const view = await readPantry(await demoContext(await open()));
    const shelved = sum(view.shelves.flatMap((s) => s.jars.map((j) => j.count)));
    expect(shelved + sum(view.floor.map((f) => f.count)) + view.waiting).toBe(view.jars);
    // 320 of glass on hand, of which the nine quarter-pints of fruit paste stand in the fridge.
    expect(view.jars).toBe(311);
    expect(view.cold.filter((c) => c.room === 'Kitchen fridge').map((c) => [c.line, c.count])).toEqual(
      expect.arrayContaining([
        ['Quince paste', 7],
        ['Damson paste', 2],
      ]),
    );
  });

  it('has twenty shelves of 900 mm and none fuller than its jars allow', async () => {
    const view = await readPantry(await demoContext(await open()));
    expect(view.shelves).toHaveLength(20);
    const whole: Record<string, number> = { HP: 96, Q4: 96, PT: 30, QT: 27 };
    for (const s of view.shelves) {
      expect([s.widthMm, s.depthMm, s.clearMm]).toEqual([900, 320, 230]);
      expect(sum(s.jars.map((j) => j.count / (whole[j.kind.code] ?? 1))), s.address).toBeLessThanOrEqual(1 + 1e-9);
    }
    const share = sum(view.shelves.map((s) => sum(s.jars.map((j) => j.count / (whole[j.kind.code] ?? 1)))));
    expect(view.roomFor).toBeLessThanOrEqual((20 - share) * 96);
    expect(view.roomFor).toBeGreaterThan((20 - share) * 96 - 20);
  });

  it('has 37 lines, and each line’s jars are numbered and counted alike', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const { lines } = await readPantry(ctx);
    expect(lines).toHaveLength(37);
    for (const line of lines) {
      const view = await readLine(ctx, line.slug);
      expect([view?.line, view?.pieces.length]).toEqual([line.line, line.onHand]);
      expect(new Set(view?.pieces.map((p) => p.code)).size).toBe(line.onHand);
      expect(sum(line.lots.map((l) => l.count))).toBe(line.onHand);
    }
    expect(await readLine(ctx, 'no-such-line')).toBeNull();
    expect(lineSlug('Seville marmalade (Feb)')).toBe('seville-marmalade-feb');
  });

  it('puts a new jar of a line where that line stands', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const lot = (await loadLots(db, DEMO_PLACE, { kinds: ['jars'] })).find((l) => l.label === 'Damson jam');
    if (!lot) throw new Error('no damson jam');
    const address = await suggestAddress(ctx, { ...lot, onHand: 6 });
    expect(address.suggested).toBe('B2-S1');
    expect(address.addresses).toHaveLength(21);
    expect((await suggestAddress(ctx, { ...lot, onHand: 500 })).suggested).toBe('floor');
  });
});

describe('the stores in January', () => {
  it('hold the supplies of the year’s end', async () => {
    const { supplies } = await readPlace(await demoContext(await open()));
    const qty = (item: string) => supplies.find((s) => s.item === item)?.qty;
    expect([qty('sugar'), qty('lid-regular'), qty('lid-wide'), qty('lid-regular-old'), qty('lemon-juice')]).toEqual([
      18_000, 148, 60, 22, 1500,
    ]);
    expect(['HP', 'PT', 'QT', 'Q4'].map(qty)).toEqual([214, 96, 38, 44]);
  });

  it('hold the set-asides, none better than untested', async () => {
    const view = await readSetAsides(await demoContext(await open()));
    expect(view.powderG).toBe(1172);
    expect(view.lots.map((l) => [l.code.split('-')[2], l.amount, l.unit]).sort()).toEqual([
      ['APC', 1172, 'g'],
      ['PST', 9, 'pack'],
      ['RND', 420, 'g'],
    ]);
    expect(view.lots.every((l) => l.strength === 'untested')).toBe(true);
    expect(view.lots.find((l) => l.code.includes('APC'))?.grade).toBe('blemished');
  });
});

describe('a trace', () => {
  it('of a jar goes back to trees and receipts and out to where its sisters went', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    doneOf(
      await takeJars(ctx, {
        id: 'give-a-damson',
        slug: 'damson-jam',
        count: 1,
        to: 'given',
        who: 'a neighbour',
        person: null,
        at: null,
      }),
    );
    const lot = (await loadLots(db, DEMO_PLACE, { kinds: ['jars'], emptied: true })).find(
      (l) => l.label === 'Damson jam' && l.onHand > 0 && l.madeOn > '2025',
    );
    if (!lot) throw new Error('no damson jam');
    const trace = await readTrace(ctx, `${lot.code}/01`);
    if (!trace) throw new Error('no trace');
    expect(trace.trees).toEqual(['D3-05', 'D3-06', 'D3-07']);
    expect(trace.sisters).toHaveLength(trace.made);
    expect(sum(trace.sisters.map((s) => (/^B\d-S\d$/.test(s.where) ? 1 : 0)))).toBe(lot.onHand);
    expect(trace.sisters.some((s) => s.where === 'given, a neighbour on 2026-01-15')).toBe(true);
    expect(trace.receipts.map((r) => r.label)).toEqual(expect.arrayContaining(['Sugar', 'Lids, regular']));
    const fruit = trace.parents.filter((p) => p.kind === 'fruit');
    expect(sum(fruit.map((p) => p.grams))).toBe(trace.made * 215);
    const cards = traceCards(trace);
    expect(cards.answer).toBe(`${lot.code}/01: Damson jam`);
    expect(cards.sub).toContain(`3 trees and rows behind it`);
    expect(cards.sub).toContain(`${trace.made - 1} sister jar`);
  });

  it('of a jar with set-aside powder in it reaches the powder’s own lot', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const lots = await loadLots(db, DEMO_PLACE, { kinds: ['jars'], emptied: true });
    const traces = await Promise.all(lots.filter((l) => l.label === 'Tayberry jam').map((l) => readTrace(ctx, l.code)));
    const powder = traces.flatMap((t) => t?.parents.filter((p) => p.code === 'S-24275-APC-1') ?? []);
    expect(powder.map((p) => [p.kind, p.grams])).toEqual([['set-aside', 120]]);
    expect(traces.every((t) => t?.piece === null)).toBe(true);
  });

  it('of a number that is not in the lot says so, and of a code nobody knows is none', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const lot = (await loadLots(db, DEMO_PLACE, { kinds: ['jars'] }))[0];
    expect((await readTrace(ctx, `${lot?.code}/99`))?.piece?.state).toBe('there is no such jar in this lot');
    expect(await readTrace(ctx, '25001-XXX-A/01')).toBeNull();
    expect([splitCode('25256-DAM-A/01'), splitCode('25256-DAM-A'), splitCode('H-25255-D3-DAM-1/P')]).toEqual([
      ['25256-DAM-A', 1],
      ['25256-DAM-A', null],
      ['H-25255-D3-DAM-1/P', null],
    ]);
  });

  it('is found by a part of a code or of a name, newest first', async () => {
    const ctx = await demoContext(await open());
    const found = await searchCodes(ctx, 'damson jam');
    expect(found.length).toBeGreaterThan(3);
    expect(found.every((f) => f.label.startsWith('Damson jam'))).toBe(true);
    expect(found.map((f) => f.madeOn)).toEqual(
      found
        .map((f) => f.madeOn)
        .sort()
        .reverse(),
    );
    expect(await searchCodes(ctx, 'da')).toEqual([]);
  });
});
