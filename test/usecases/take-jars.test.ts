import { describe, expect, it } from 'vitest';
import { loadLots, rebuildBalances } from '#lib/store/ledger-store.ts';
import type { Context } from '#lib/usecases/context.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { type AnswerInput, answerQuestion, openQuestions } from '#lib/usecases/questions.ts';
import { readLine } from '#lib/usecases/read-pantry.ts';
import { takeActs } from '#lib/usecases/take-acts.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { demoContext, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';

const open = demoOn('2026-01-15');
const taking = (slug: string, count: number, change: object = {}) => ({
  id: `take-${slug}-${count}`,
  slug,
  count,
  to: 'eaten' as const,
  who: null,
  person: null,
  at: null,
  ...change,
});

describe('jars taken from a line', () => {
  it('that was never made are refused, with the lines that come near', async () => {
    const ctx = await demoContext(await open());
    expect(refusalOf(await takeJars(ctx, taking('fig-conserve', 2, { to: 'given' })))).toBe(
      'there is no "fig conserve" on hand; there is Sour cherry-almond conserve, Blueberry-lemon conserve, Pear-ginger conserve',
    );
    expect(refusalOf(await takeJars(ctx, taking('nothing-of-it', 1)))).toBe('there is no "nothing of it" on hand');
  });

  it('leave the rest, and more than the rest is refused with the figure', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const gift = { to: 'given' as const, who: 'a neighbour' };
    const done = doneOf(await takeJars(ctx, taking('quince-paste', 3, gift)));
    expect([done.jars.length, done.left]).toEqual([3, 4]);
    expect(done.said).toMatch(/^Given: .* \(a neighbour\)\. 4 left of Quince paste\.$/);
    expect(refusalOf(await takeJars(ctx, taking('quince-paste', 6, gift)))).toBe('4 left of Quince paste; 6 asked for');
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('by two people at once who ask for 4 and 3 of the last 4: one has them, the other is told what is left', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    doneOf(await takeJars(ctx, taking('quince-paste', 3, { id: 'take-first-three' })));
    const answers = await Promise.all([4, 3].map((n) => takeJars(ctx, taking('quince-paste', n))));
    const kept = answers.flatMap((a) => ('done' in a ? [a.done] : []));
    expect(kept).toHaveLength(1);
    const gone = kept[0]?.jars.length ?? 0;
    expect(answers.flatMap((a) => ('refused' in a ? [a.refused] : []))).toEqual([
      `${4 - gone} left of Quince paste; ${7 - gone} asked for`,
    ]);
    const left = (await loadLots(db, DEMO_PLACE))
      .filter((l) => l.label === 'Quince paste')
      .reduce((n, l) => n + l.onHand, 0);
    expect(left).toBe(4 - gone);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('of a line that is used up are refused with nothing left, not as a line that never was', async () => {
    const ctx = await demoContext(await open());
    doneOf(await takeJars(ctx, taking('mirabelle-jam', 3)));
    expect(refusalOf(await takeJars(ctx, taking('mirabelle-jam', 1)))).toBe('0 left of Mirabelle jam; 1 asked for');
  });

  it('are the oldest, by number, across lots, and each only once', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const before = (await readLine(ctx, 'apple-sauce'))?.pieces.map((p) => p.code) ?? [];
    expect(before).toHaveLength(39);
    const days = (await readLine(ctx, 'apple-sauce'))?.pieces.map((p) => p.madeOn) ?? [];
    expect(days).toEqual([...days].sort());
    const taken: string[] = [];
    for (const n of [10, 10, 19])
      taken.push(...doneOf(await takeJars(ctx, taking('apple-sauce', n, { id: `take-sauce-${taken.length}` }))).jars);
    expect(taken).toEqual(before);
    expect(await readLine(ctx, 'apple-sauce')).toBeNull();
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('sent twice are taken once and answered the same', async () => {
    const ctx = await demoContext(await open());
    const first = doneOf(await takeJars(ctx, taking('damson-jam', 2)));
    const again = await takeJars(ctx, taking('damson-jam', 2));
    expect(again).toEqual({ done: first, replayed: true });
    expect((await readLine(ctx, 'damson-jam'))?.onHand).toBe(8);
  });

  it('give their glass back to the empties when eaten, not when given', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const empties = async () => (await loadLots(db, DEMO_PLACE, { kinds: ['empties'], item: 'HP' }))[0]?.onHand ?? 0;
    const before = await empties();
    doneOf(await takeJars(ctx, taking('damson-jam', 2)));
    expect(await empties()).toBe(before + 2);
    doneOf(await takeJars(ctx, taking('damson-jam', 3, { to: 'given' })));
    expect(await empties()).toBe(before + 2);
  });

  it('on hold stay where they are', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const lots = (await loadLots(db, DEMO_PLACE)).filter((l) => l.label === 'Damson jam');
    for (const l of lots) await db.lot.update({ where: { id: l.id }, data: { hold: 'a second jar had mould' } });
    expect(refusalOf(await takeJars(ctx, taking('damson-jam', 1)))).toBe(
      '0 left of Damson jam that may leave (the others: on hold: a second jar had mould); 1 asked for',
    );
    expect(
      (await readLine(ctx, 'damson-jam'))?.pieces.every(
        (p) => !p.mayLeave && p.why === 'on hold: a second jar had mould',
      ),
    ).toBe(true);
  });

  it('that are for the household alone are not sold, and the answer says so', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    expect(refusalOf(await takeJars(ctx, taking('apple-sauce', 1, { to: 'sold' })))).toBe(
      '0 left of Apple sauce that may leave (the others: for the household and gifts); 1 asked for',
    );
    expect(doneOf(await takeJars(ctx, taking('damson-jam', 1, { to: 'sold' }))).left).toBe(9);
  });

  it('whose process was cut short are not sold, though they may be eaten', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    for (const l of (await loadLots(db, DEMO_PLACE)).filter((x) => x.label === 'Damson jam'))
      await db.lot.update({ where: { id: l.id }, data: { process: 'not as tested' } });
    expect(refusalOf(await takeJars(ctx, taking('damson-jam', 1, { to: 'sold' })))).toBe(
      '0 left of Damson jam that may leave (the others: process not as tested); 1 asked for',
    );
    expect(doneOf(await takeJars(ctx, taking('damson-jam', 1, { id: 'eat-it-now' }))).left).toBe(9);
  });
});

describe('jars told of afterwards by two devices', () => {
  const told = (id: string, slug: string, count: number, to: string, who = '') => ({
    id,
    what: 'take',
    slug,
    count: String(count),
    to,
    who,
    at: '2026-01-15T12:30:00.000Z',
  });
  const onHand = async (ctx: Context, slug: string) => (await readLine(ctx, slug))?.onHand ?? 0;
  const answer = (question: string, way: AnswerInput['way'], change: Partial<AnswerInput> = {}) => ({
    id: `answer-${question}-${way}`,
    question,
    way,
    line: null,
    grams: null,
    ...change,
  });

  it('4 and 3 of the last 4: one act is kept, the other stays as a question until it is answered (D5)', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    doneOf(await takeJars(ctx, taking('quince-paste', 3, { to: 'given' })));
    const acts = [
      told('phone-one-gives', 'quince-paste', 4, 'given', 'Ana'),
      told('phone-two-gives', 'quince-paste', 3, 'given', 'Ben'),
    ];
    const answers = [await takeActs(ctx, { acts: [acts[0]] }), await takeActs(ctx, { acts: [acts[1]] })].flat();
    expect(answers.map((a) => a?.status)).toEqual(['saved', 'question']);
    expect(await onHand(ctx, 'quince-paste')).toBe(0);
    const open1 = await openQuestions(ctx);
    expect(open1.map((q) => q.text)).toEqual(['Given 3 Quince paste (Ben) at 12:30, but none was left: which was it?']);
    // Both queues sent again: the same answers, nothing doubled, still one question.
    expect((await takeActs(ctx, { acts }))?.map((a) => a.status)).toEqual(['known', 'question']);
    expect(await openQuestions(ctx)).toEqual(open1);
    expect(doneOf(await answerQuestion(ctx, answer('phone-two-gives', 'none'))).said).toContain(
      'nothing left the shelf',
    );
    expect(await openQuestions(ctx)).toEqual([]);
    expect(refusalOf(await answerQuestion(ctx, answer('phone-two-gives', 'all')))).toBe('it is answered already');
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('one eaten and three sold of the last three mirabelle: one question, no negative number (D9)', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    expect(await onHand(ctx, 'mirabelle-jam')).toBe(3);
    await takeActs(ctx, { acts: [told('child-eats-one', 'mirabelle-jam', 1, 'eaten')] });
    const [sold] =
      (await takeActs(ctx, { acts: [told('odda-sells-three', 'mirabelle-jam', 3, 'sold', 'the stall')] })) ?? [];
    expect(sold).toMatchObject({ status: 'question' });
    expect(await onHand(ctx, 'mirabelle-jam')).toBe(2);
    const [q] = await openQuestions(ctx);
    expect(q?.text).toBe('Sold 3 Mirabelle jam (the stall) at 12:30, but only 2 were left: which was it?');
    expect(doneOf(await answerQuestion(ctx, answer('odda-sells-three', 'left'))).said).toContain(
      '0 left of Mirabelle jam',
    );
    expect(await onHand(ctx, 'mirabelle-jam')).toBe(0);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('all of them, when the shelf held more than the book: the difference is found, then leaves by number', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    doneOf(await takeJars(ctx, taking('mirabelle-jam', 2)));
    await takeActs(ctx, { acts: [told('sold-three-more', 'mirabelle-jam', 3, 'given')] });
    expect(doneOf(await answerQuestion(ctx, answer('sold-three-more', 'all'))).said).toContain(
      '0 left of Mirabelle jam',
    );
    expect(await onHand(ctx, 'mirabelle-jam')).toBe(0);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('or of another line after all', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const before = await onHand(ctx, 'apple-butter');
    await takeActs(ctx, { acts: [told('five-of-what', 'mirabelle-jam', 5, 'given')] });
    doneOf(await answerQuestion(ctx, answer('five-of-what', 'line', { line: 'apple-butter' })));
    expect([await onHand(ctx, 'mirabelle-jam'), await onHand(ctx, 'apple-butter')]).toEqual([3, before - 5]);
  });
});
