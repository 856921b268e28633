import { describe, expect, it } from 'vitest';
import { DEMO_LINES, isShelved, madeInYear } from '#lib/demo/lines.ts';
import { DEMO_CROPS } from '#lib/demo/wrenlatch.ts';
import { loadLots, lotOfCode } from '#lib/store/ledger-store.ts';
import { holdCircle, recordDrill } from '#lib/usecases/hold-circle.ts';
import { keepRuleCard, noteIngredient } from '#lib/usecases/note-jars.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { readBatchRecord } from '#lib/usecases/read-batch-record.ts';
import { readCard, stallCards } from '#lib/usecases/read-card.ts';
import { readLabel } from '#lib/usecases/read-label.ts';
import { readBatchFlow, readSeasonFlow } from '#lib/usecases/read-mass-flow.ts';
import { drillsOf, readRecall } from '#lib/usecases/read-recall.ts';
import { takeActs } from '#lib/usecases/take-acts.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { demoContext, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';

const open = demoOn('2026-01-15');

describe('what is in a jar (story C3)', () => {
  it('is answered by its lot: almonds, the same pan, trees and young trees', async () => {
    const ctx = await demoContext(await open());
    const found = await readCard(ctx, '25207-sch-a/05');
    expect(found?.jar).toBe('25207-SCH-A/05');
    expect(found?.card.allergens).toEqual(['tree nuts (almonds)']);
    expect(found?.card.ingredients).toMatch(/^sour cherries, sugar, .*almonds/);
    expect(found?.card.trees).toEqual(['D1-01', 'D1-02', 'D1-03', 'D1-04']);
    expect(found?.card.youngTrees).toEqual([{ cultivar: 'Montmorency', forSale: 6 }]);
    expect(await readCard(ctx, 'NO-SUCH')).toBeNull();
  });

  it('names what else was made that day in the same pan', async () => {
    const ctx = await demoContext(await open());
    const found = await readCard(ctx, '25195-BCU-A');
    expect(found?.card.samePan).toEqual([{ line: 'Gooseberry jam', allergens: [] }]);
  });

  it('is kept for the stall for every lot, with the reasons against a sale', async () => {
    const ctx = await demoContext(await open());
    const cards = await stallCards(ctx);
    expect(cards.length).toBeGreaterThan(80);
    const sauce = cards.filter((c) => c.slug === 'apple-sauce' && c.onHand);
    expect(sauce.length).toBeGreaterThan(0);
    for (const c of sauce) expect(c.against).toContain('for the household and gifts');
    const may = cards.filter((c) => c.onHand && c.against.length === 0);
    expect(may.map((c) => c.slug)).toContain('damson-jam');
    // A lot carried over from the year before has no batch on record: nobody can say what is in it.
    for (const c of cards.filter((x) => x.ingredients === null)) expect(c.against.length).toBeGreaterThan(0);
  });
});

describe('a label', () => {
  it('is made from the lots of its batch, and butter noted later makes it say milk', async () => {
    const ctx = await demoContext(await open());
    const lots = (await loadLots(ctx.db, DEMO_PLACE, { kinds: ['jars'] })).filter((l) => l.label === 'Damson jam');
    const code = lots[0]?.code as string;
    const before = await readLabel(ctx, code, 'sale');
    expect(before?.label?.name).toBe('Damson jam');
    expect(before?.label?.ingredients).toMatch(/^damsons, sugar/);
    expect(before?.label?.contains).toBeNull();
    expect(before?.label?.net).toBe('311 g (10.9 oz)');
    expect(before?.label?.homeKitchen).toBe('Made in a Home Kitchen');
    doneOf(await noteIngredient(ctx, { id: 'note-butter-1', lot: code, what: 'butter' }));
    const after = await readLabel(ctx, code, 'sale');
    expect(after?.label?.contains).toBe('milk (butter)');
    expect(after?.label?.ingredients).toMatch(/butter$/);
  });

  it('for sale is not made once the rule card asks for what is blank, and says which', async () => {
    const db = await open();
    const lots = (await loadLots(db, DEMO_PLACE, { kinds: ['jars'] })).filter((l) => l.label === 'Damson jam');
    const code = lots[0]?.code as string;
    const card = {
      maker: '',
      address: 'A lane',
      contact: '',
      permit: '',
      homeKitchen: '',
      juice: '',
      checkedWith: 'x',
      checkedOn: '2025-01-01',
      asks: 'permit',
    };
    doneOf(await keepRuleCard(await demoContext(db), { id: 'keep-card-1', ...card }));
    const view = await readLabel(await demoContext(db), code, 'sale');
    expect(view?.label).toBeNull();
    expect(view?.blanks.map((b) => b.split(/[:,]/)[0])).toEqual(['maker', 'permit number']);
    expect((await readLabel(await demoContext(db), code, 'home'))?.label?.name).toBe('Damson jam');
  });
});

describe('a recall (story C4)', () => {
  it('finds every jar of a sugar lot, and counts as many as were filled from it', async () => {
    const ctx = await demoContext(await open());
    const view = await readRecall(ctx, 'R-25180-SUG-1');
    expect(view).not.toBeNull();
    expect(view?.total).toBe(view?.made);
    expect(view?.total).toBeGreaterThan(300);
    expect(view?.batches.reduce((n, b) => n + b.jars, 0)).toBe(view?.total);
    expect(view?.places.reduce((n, p) => n + p.count, 0)).toBe(view?.total);
    const not = view?.places.filter((p) => !p.placed).reduce((n, p) => n + p.count, 0) ?? 0;
    expect(view?.placedPercent).toBe(Math.floor((100 * ((view?.total ?? 0) - not)) / (view?.total ?? 1)));
    const sold = view?.places.filter((p) => p.where.startsWith('sold')) ?? [];
    expect(sold.length).toBeGreaterThan(3);
    for (const p of sold) expect(p.where).toMatch(/^sold, the stall, Sat /);
    expect(view?.places.some((p) => p.where.startsWith('given to '))).toBe(true);
    expect(view?.places.some((p) => /^on B\d-S\d$/.test(p.where))).toBe(true);
  });

  it('by a lid box finds the jars those lids closed', async () => {
    const ctx = await demoContext(await open());
    const lids = (await loadLots(ctx.db, DEMO_PLACE, { kinds: ['lids'], emptied: true })).find(
      (l) => l.item === 'lid-regular',
    );
    const view = await readRecall(ctx, lids?.code ?? '');
    expect(view?.total).toBe(view?.made);
    expect(view?.total).toBeGreaterThan(100);
  });

  it('holds what is still here: nothing of it is sold or cooked', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const told = doneOf(await holdCircle(ctx, { id: 'hold-sugar-1', code: 'R-25180-SUG-1', why: 'supplier’s letter' }));
    expect(told.said).toMatch(/lots on hold/);
    expect((await readRecall(ctx, 'R-25180-SUG-1'))?.free).toBe(0);
    const lot = (await loadLots(db, DEMO_PLACE)).find((l) => l.hold && l.label === 'Damson jam');
    expect(lot?.hold).toBe('supplier’s letter');
    const cards = await stallCards(ctx);
    for (const c of cards.filter((x) => x.lot === lot?.code)) expect(c.against).toContain('on hold: supplier’s letter');
  });

  it('as a drill is written down and listed', async () => {
    const ctx = await demoContext(await open());
    doneOf(await recordDrill(ctx, { id: 'drill-one-1', code: 'R-25180-SUG-1' }));
    const drills = await drillsOf(ctx);
    expect(drills.map((d) => [d.code, d.day])).toEqual([['R-25180-SUG-1', '2026-01-15']]);
    expect(drills[0]?.total).toBe((await readRecall(ctx, 'R-25180-SUG-1'))?.total);
  });

  it('of a code nothing bears is no circle at all', async () => {
    expect(await readRecall(await demoContext(await open()), 'R-00000-XXX-9')).toBeNull();
  });
});

describe('the mass of the season', () => {
  it('is whole at every stage, from the kilograms of the season table to what is left', async () => {
    const { year, flow } = await readSeasonFlow(await demoContext(await open()), null);
    expect(year).toBe(2025);
    const into = (id: string) => flow.links.filter((l) => l.to === id).reduce((g, l) => g + l.grams, 0);
    const outOf = (id: string) => flow.links.filter((l) => l.from === id).reduce((g, l) => g + l.grams, 0);
    // Plants times kilograms each of the demo's own crop table.
    expect(outOf('trees')).toBe(DEMO_CROPS.reduce((g, c) => g + c.count * c.gPerUnit, 0));
    for (const id of ['store', 'pans']) expect(into(id), id).toBe(outOf(id));
    const made = DEMO_LINES.filter(isShelved).reduce((g, l) => g + madeInYear(l) * l.netG, 0);
    expect(into('jars')).toBe(made);
  });

  it('of a batch comes out to the gram', async () => {
    const ctx = await demoContext(await open());
    const lot = await lotOfCode(ctx.db, DEMO_PLACE, '25207-SCH-A');
    const flow = await readBatchFlow(ctx, lot?.batchId ?? null);
    const side = (end: 'from' | 'to') =>
      flow?.links.filter((l) => l[end] === 'pan').reduce((g, l) => g + l.grams, 0) ?? 0;
    expect(side('to')).toBeGreaterThan(2000);
    expect(side('from')).toBe(side('to'));
  });
});

describe('the record of a batch', () => {
  it('names recipe and source, kitchen, lots, lids and where the jars went', async () => {
    const view = await readBatchRecord(await demoContext(await open()), '25207-SCH-A');
    const fact = (what: string) => view?.facts.find((f) => f.what === what)?.value;
    expect(fact('Kitchen')).toBe('Home kitchen, 410 m above the sea');
    expect(fact('Filled')).toBe('7 jars and packs');
    expect(fact('Process')).toBe('as tested');
    expect(view?.lots.map((l) => l.code)).toEqual(
      expect.arrayContaining(['R-25180-SUG-1', 'R-25001-ALM-1', 'R-25001-LID-1']),
    );
    expect(view?.sums.reduce((n, s) => n + s.count, 0)).toBe(7);
  });
});

describe('a sale kept on the device', () => {
  const sale = (id: string, count: number) => ({
    id,
    what: 'take',
    slug: 'damson-jam',
    count: String(count),
    to: 'sold',
    who: 'the stall',
  });

  it('is taken once however often it is sent, and too many come back as a question', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const acts = [sale('stall-sale-1', 2), sale('stall-sale-1', 2), sale('stall-sale-2', 40)];
    const answers = await takeActs(ctx, { acts });
    expect(answers?.map((a) => a.status)).toEqual(['saved', 'known', 'question']);
    const left = (await loadLots(db, DEMO_PLACE)).filter((l) => l.label === 'Damson jam');
    expect(left.reduce((n, l) => n + l.onHand, 0)).toBe(8);
  });

  it('of one lot leaves the others alone, and says when that lot is empty', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const lots = (await loadLots(db, DEMO_PLACE)).filter((l) => l.label === 'Damson jam' && l.onHand > 0);
    const last = lots.at(-1);
    const ask = {
      slug: 'damson-jam',
      count: last?.onHand ?? 0,
      to: 'sold' as const,
      who: null,
      person: null,
      at: null,
    };
    const done = doneOf(await takeJars(ctx, { ...ask, id: 'sale-of-lot-1', lot: last?.code ?? '', price: 650 }));
    for (const jar of done.jars) expect(jar.startsWith(`${last?.code}/`)).toBe(true);
    expect((await lotOfCode(db, DEMO_PLACE, last?.code ?? ''))?.onHand).toBe(0);
    expect(refusalOf(await takeJars(ctx, { ...ask, id: 'sale-of-lot-2', lot: last?.code ?? '' }))).toMatch(
      /^0 left of /,
    );
  });
});
