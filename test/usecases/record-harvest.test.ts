import { describe, expect, it } from 'vitest';
import { loadActs } from '#lib/store/act-store.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots, rebuildBalances } from '#lib/store/ledger-store.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import type { Context } from '#lib/usecases/context.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { type AnswerInput, answerQuestion, openQuestions } from '#lib/usecases/questions.ts';
import { readHarvest } from '#lib/usecases/read-harvest.ts';
import { inSeason, recordHarvest, usualPickingG } from '#lib/usecases/record-harvest.ts';
import { recordPlain } from '#lib/usecases/record-plain-harvest.ts';
import { takeActs } from '#lib/usecases/take-acts.ts';
import { demoAt, demoContext, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { bucket, damsons } from './damson-day.ts';

const open = demoOn('2025-09-12');
const written = (db: Db) => db.act.count({ where: { placeId: DEMO_PLACE, device: null } });

describe('a weight that cannot be true', () => {
  it('is refused with both figures when the bucket alone weighs more', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const light = damsons({ readings: [bucket(500)], grades: {} });
    expect(refusalOf(await recordHarvest(ctx, light))).toBe('gross less than the bucket: 0.50 < 0.62');
    const below = damsons({ readings: [bucket(5620), bucket(220)], grades: { perfect: 4600 } });
    expect(refusalOf(await recordHarvest(ctx, below))).toBe('gross less than the bucket: 0.22 < 0.62');
    expect(await written(db)).toBe(0);
  });

  it('is refused when the bucket is empty or nothing was weighed', async () => {
    const ctx = await demoContext(await open());
    expect(refusalOf(await recordHarvest(ctx, damsons({ readings: [bucket(620)], grades: {} })))).toBe(
      'nothing in the bucket: 0.62 = 0.62',
    );
    expect(refusalOf(await recordHarvest(ctx, damsons({ readings: [] })))).toBe('no weight was given');
  });

  it('is refused when the grades do not add up to the scale, or one is below zero', async () => {
    const ctx = await demoContext(await open());
    expect(refusalOf(await recordHarvest(ctx, damsons({ grades: { perfect: 13_750 } })))).toBe(
      'the grades add up to 13.75 kg · 30.3 lb, the scale to 13.74 kg · 30.3 lb: 10 g over',
    );
    expect(refusalOf(await recordHarvest(ctx, damsons({ grades: { perfect: 9000 } })))).toContain('4740 g short');
    expect(refusalOf(await recordHarvest(ctx, damsons({ grades: { perfect: 14_740, soft: -1000 } })))).toBe(
      'a grade is below zero',
    );
  });

  it('is kept and flagged when it is only doubtful', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const crop = ctx.place.crops.find((c) => c.code === 'damson');
    if (!crop) throw new Error('no damson');
    const usual = usualPickingG(crop);
    // Three trees of 20 kg over the 21 days from 5 to 25 September, picked every other day.
    expect(usual).toBe(Math.round(60_000 / 10.5));
    const heap = 3 * usual + 1;
    const done = doneOf(
      await recordHarvest(ctx, damsons({ readings: [bucket(heap + 620)], grades: { perfect: heap } })),
    );
    expect(done.flags).toEqual(['more than three times the usual 5.71 kg · 12.6 lb of a picking']);
    expect((await loadLots(db, DEMO_PLACE, { ids: ['harvest-damsons.perfect'] }))[0]?.flags).toEqual(done.flags);
    const enough = doneOf(
      await recordHarvest(
        ctx,
        damsons({ id: 'harvest-2', readings: [bucket(heap - 1 + 620)], grades: { perfect: heap - 1 } }),
      ),
    );
    expect(enough.flags).toEqual([]);
  });
});

describe('a look at the row', () => {
  it('where nothing was ripe is a record without fruit', async () => {
    const db = await open();
    const done = doneOf(
      await recordHarvest(await demoContext(db), damsons({ readings: [], grades: {}, nothing: 'nothing ripe' })),
    );
    expect(done).toEqual({ code: '', netG: 0, flags: [], said: 'Looked at D3, damson: nothing ripe.' });
    const [act] = await loadActs(db, DEMO_PLACE, { ids: ['harvest-damsons'] });
    expect([act?.kind, act?.payload.nothing, act?.movements]).toEqual(['harvest', 'nothing ripe', []]);
  });
});

describe('the day of a picking', () => {
  it('months ahead is refused with the day that may have been meant', async () => {
    const ctx = await demoAt(await open(), '2026-01-15', '09:00');
    expect(refusalOf(await recordHarvest(ctx, damsons({ day: '2026-09-13' })))).toBe(
      'that is 34 weeks ahead; did you mean 13 September 2025?',
    );
    expect(refusalOf(await recordHarvest(ctx, damsons({ day: '2026-01-17' })))).toBe(
      'that is 2 days ahead; did you mean 17 January 2025?',
    );
    expect(refusalOf(await recordHarvest(ctx, damsons({ day: '2028-02-29' })))).toBe('that is 110 weeks ahead');
    expect(refusalOf(await recordHarvest(ctx, damsons({ day: '13.9.2025' })))).toBe(
      '"13.9.2025" is not a day of the calendar; write it as year-month-day',
    );
    expect(refusalOf(await recordHarvest(ctx, damsons({ day: '2025-09-31' })))).toContain('not a day of the calendar');
  });

  it('that is today in another time zone passes', async () => {
    const ctx = await demoContext(await open());
    expect(doneOf(await recordHarvest(ctx, damsons({ day: '2025-09-13' }))).code).toBe('H-25256-D3-DAM-1');
  });

  it('entered late is that day’s own, numbered after what stands there already', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const done = doneOf(await recordHarvest(ctx, damsons({ day: '2025-09-10' })));
    expect(done.code).toBe('H-25253-D3-DAM-2');
    const [lot] = await loadLots(db, DEMO_PLACE, { ids: ['harvest-damsons.soft'] });
    expect([lot?.madeOn, lot?.since.slice(0, 10)]).toEqual(['2025-09-10', '2025-09-10']);
  });
});

describe('the row', () => {
  it('must be one of the place’s own with that crop in it', async () => {
    const ctx = await demoContext(await open());
    for (const rowId of ['Z9|damson', 'D3|quince', 'D3', ''])
      expect(refusalOf(await recordHarvest(ctx, damsons({ rowId })))).toBe(`there is no row "${rowId}" here`);
  });

  it('with two crops of one food gives each picking a code of its own', async () => {
    const ctx = await demoAt(await open(), '2025-10-16', '18:00');
    const apples = { day: '2025-10-16', readings: [bucket(5620)], grades: { perfect: 5000 } };
    const first = doneOf(await recordHarvest(ctx, damsons({ ...apples, id: 'apples-1', rowId: 'A3|apple-keeper' })));
    const second = doneOf(await recordHarvest(ctx, damsons({ ...apples, id: 'apples-2', rowId: 'A3|apple-russet' })));
    expect([first.code, second.code]).toEqual(['H-25289-A3-APL-1', 'H-25289-A3-APL-2']);
  });

  it('is offered first while its fruit is in season', async () => {
    const view = await readHarvest(await demoContext(await open()));
    const firstOut = view.rows.findIndex((r) => !r.inSeason);
    expect(firstOut).toBeGreaterThan(3);
    expect(view.rows.slice(firstOut).every((r) => !r.inSeason)).toBe(true);
    expect(view.rows.find((r) => r.id === 'D3|damson')).toMatchObject({
      inSeason: true,
      usualKg: 5.7,
      cropId: 'damson',
    });
    expect(view.containers.find((c) => c.label === 'Blue bucket')?.tareG).toBe(620);
    const window = { windowFrom: '09-05', windowTo: '09-25' };
    expect(['2025-08-25', '2025-08-26', '2025-10-05', '2025-10-06'].map((d) => inSeason(window, plainDate(d)))).toEqual(
      [false, true, true, false],
    );
  });
});

describe('the pickings of today', () => {
  it('are counted as they come in, each once', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    doneOf(await recordHarvest(ctx, damsons()));
    expect(await recordHarvest(ctx, damsons())).toMatchObject({ replayed: true });
    const view = await readHarvest(ctx);
    expect(view.pickedG).toBe(13_740);
    expect(view.pickings.map((p) => [p.what, p.grams])).toEqual([['Damson', 13_740]]);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });
});

describe('acts queued on a phone', () => {
  it('are answered in the order sent, each for itself', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const good = { ...damsons(), id: 'phone-act-1' };
    const acts = [good, { ...good, id: 'phone-act-2', rowId: 'Z9|damson' }, { id: 'phone-act-3' }, good];
    const answers = await takeActs(ctx, { acts });
    expect(answers?.map((a) => [a.id, a.status])).toEqual([
      ['phone-act-1', 'saved'],
      ['phone-act-2', 'refused'],
      ['phone-act-3', 'refused'],
      ['phone-act-1', 'known'],
    ]);
    expect(answers?.[3]).toMatchObject({ said: 'Recorded 13.74 kg · 30.3 lb of damson as H-25255-D3-DAM-1.' });
    expect(await written(db)).toBe(1);
  });

  it('sent again as a whole change nothing', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const body = { acts: [1, 2, 3].map((n) => damsons({ id: `phone-act-${n}` })) };
    await takeActs(ctx, body);
    const lots = await loadLots(db, DEMO_PLACE, { emptied: true });
    expect((await takeActs(ctx, body))?.map((a) => a.status)).toEqual(['known', 'known', 'known']);
    expect(await loadLots(db, DEMO_PLACE, { emptied: true })).toEqual(lots);
  });

  it('that are no list of acts are answered with nothing', async () => {
    const ctx = await demoContext(await open());
    for (const body of [null, 5, 'acts', {}, { acts: 'x' }, { acts: Array.from({ length: 501 }, () => ({})) }])
      expect(await takeActs(ctx, body)).toBeNull();
  });
});

describe('the plain form', () => {
  const form = (change: object) => ({
    id: 'plain-form-1',
    day: plainDate('2025-09-12'),
    row: 'D3|damson',
    gross: 5.62,
    unit: 'kg' as const,
    container: 'wrenlatch:container:blue-bucket',
    containerCount: 1,
    'grade-blemished': 1,
    'grade-soft': null,
    'grade-cull': null,
    groundFall: false,
    ...change,
  });

  it('takes the tare off and calls the rest perfect', async () => {
    const db = await open();
    expect(doneOf(await recordPlain(await demoContext(db), form({}))).netG).toBe(5000);
    const lots = await loadLots(db, DEMO_PLACE, { ids: ['plain-form-1.perfect', 'plain-form-1.blemished'] });
    expect(lots.map((l) => [l.grade, l.onHand]).sort()).toEqual([
      ['blemished', 1000],
      ['perfect', 4000],
    ]);
  });

  it('reads pounds as pounds', async () => {
    const ctx = await demoContext(await open());
    expect(doneOf(await recordPlain(ctx, form({ unit: 'lb', gross: 27.3, 'grade-blemished': null }))).netG).toBe(
      12_383 - 620,
    );
  });

  it('refuses grades above what the scale said', async () => {
    const ctx = await demoContext(await open());
    expect(refusalOf(await recordPlain(ctx, form({ 'grade-soft': 9 })))).toBe('a grade is below zero');
  });
});

describe('one bucket told of by two devices (story D4)', () => {
  const at = (time: string) => `2025-09-12T${time}:00.000Z`;
  const bryn = { ...damsons(), device: 'tablet', at: at('17:10') };
  const teen = {
    ...damsons({ id: 'teen-one-bucket', readings: [], grades: {} }),
    device: 'phone',
    at: at('16:40'),
    unweighed: { containerId: 'wrenlatch:container:blue-bucket', count: 1 },
  };
  const answer = (question: string, way: AnswerInput['way'], grams: number | null = null) => ({
    id: `answer-${question}`,
    question,
    way,
    line: null,
    grams,
  });
  const kept = async (ctx: Context) => (await readHarvest(ctx)).pickings.filter((p) => p.code === 'D3');
  const total = async (ctx: Context) => (await kept(ctx)).reduce((g, p) => g + p.grams, 0);

  it.each([
    ['the bucket first', [teen, bryn]],
    ['the weighing first', [bryn, teen]],
  ])('asks “same bucket?” with both times, %s; yes leaves one lot of 13.74 kg', async (_, acts) => {
    const db = await open();
    const ctx = await demoAt(db, '2025-09-12', '18:20');
    for (const act of acts) await takeActs(ctx, { acts: [act] });
    expect((await openQuestions(ctx)).map((q) => q.text)).toEqual([
      'Same bucket? Damson, row D3: 1 blue bucket at 17:40; 13.74 kg · 30.3 lb weighed at 18:10.',
    ]);
    // Saved twice, sent twice: nothing doubles.
    for (const act of [...acts, ...acts]) await takeActs(ctx, { acts: [act] });
    expect([await total(ctx), (await openQuestions(ctx)).length]).toEqual([13_740, 1]);
    doneOf(await answerQuestion(ctx, answer(teen.id, 'same')));
    expect([await total(ctx), (await kept(ctx)).length, (await openQuestions(ctx)).length]).toEqual([13_740, 1, 0]);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('no makes two, once the other has its weight', async () => {
    const db = await open();
    const ctx = await demoAt(db, '2025-09-12', '18:20');
    await takeActs(ctx, { acts: [teen, bryn] });
    expect(refusalOf(await answerQuestion(ctx, answer(teen.id, 'other')))).toContain('weigh it');
    expect(doneOf(await answerQuestion(ctx, answer(teen.id, 'other', 4200))).said).toContain('4.20 kg');
    expect((await kept(ctx)).map((p) => p.grams).sort((a, b) => a - b)).toEqual([4200, 13_740]);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('weighed by both within the hour is asked too; another hour, another weight or the same device is not', async () => {
    const ctx = await demoAt(await open(), '2025-09-12', '18:20');
    const again = (id: string, change: object) => ({
      ...damsons({ id, readings: [bucket(5640)], grades: { perfect: 5020 } }),
      device: 'phone',
      at: at('16:40'),
      ...change,
    });
    const statuses = await takeActs(ctx, {
      acts: [
        bryn,
        again('same-again-one', {}),
        again('two-hours-before', { at: at('14:40') }),
        again('another-weight', { readings: [bucket(4200)], grades: { perfect: 3580 } }),
        again('the-same-device', { device: 'tablet' }),
      ],
    });
    expect(statuses?.map((a) => a.status)).toEqual(['saved', 'question', 'saved', 'saved', 'saved']);
    doneOf(await answerQuestion(ctx, answer('same-again-one', 'other')));
    expect(await total(ctx)).toBe(13_740 + 3 * 5020 + 3580);
  });
});
