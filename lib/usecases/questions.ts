/**
 * Acts from a device that no longer fit, and buckets that may be the same bucket: each is kept as a question until somebody
 * answers it. A question moves nothing, so no balance goes below zero and nothing that was typed is lost.
 */
import { childId, type Entry, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import { correctionsAmong, loadActs, type StoredAct } from '#lib/store/act-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import { bothMasses, counted } from '#lib/units/format.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { localClock } from './local-clock.ts';
import { type HarvestInput, harvestOf, recordHarvest } from './record-harvest.ts';
import { mayLeave, type TakeInput, takeActOf, takeEntry, takeJars } from './take-jars.ts';

/** A picking as a device sends it; a full container may wait for the scale. */
export type BucketInput = HarvestInput & { unweighed: { containerId: string; count: number } | null };

export type Taken = Written<Told> | { question: string };

/** Jars that left, told afterwards by a device: recorded, or kept as a question when there were not so many. */
export async function takeAfterwards(ctx: Context, input: TakeInput): Promise<Taken> {
  const asked = await questionOf(ctx, input.id);
  if (asked) return { question: asked };
  const done = await takeJars(ctx, input);
  if (!('refused' in done)) return done;
  const there = await mayLeave(ctx, ctx.db, input);
  if (!there) return done;
  const left = Math.min(there.count, input.count);
  return ask(
    ctx,
    { ...takeActOf(ctx, input), kind: 'question' },
    { about: 'take', take: input, left, stays: there.stays },
  );
}

/** Minutes within which two devices may have recorded one bucket, and how far two weighings of it may lie apart. This program's choice. */
const SAME_WITHIN_MIN = 60;
const SAME_WITHIN_G = 200;
/** A bucket that waits for the scale may wait this long. This program's choice. */
const WEIGHED_WITHIN_MIN = 180;

/** A picking from a device: recorded, or kept as a question when it waits for the scale or another device has the same bucket. */
export async function harvestAfterwards(ctx: Context, input: BucketInput): Promise<Taken> {
  const asked = await questionOf(ctx, input.id);
  if (asked) return { question: asked };
  const { unweighed, ...harvest } = input;
  const known = (await loadActs(ctx.db, ctx.place.id, { ids: [input.id] })).length > 0;
  if (!known && (unweighed || (await twinOf(ctx, ctx.db, input)))) {
    const probe = harvestOf(ctx, unweighed ? { ...harvest, nothing: 'not weighed' } : harvest);
    if ('refused' in probe) return probe;
    return ask(ctx, { ...probe.act, kind: 'question' }, { about: 'bucket', bucket: input });
  }
  return recordHarvest(ctx, harvest);
}

type Payload =
  | { about: 'take'; take: TakeInput; left: number; stays: string | null }
  | { about: 'bucket'; bucket: BucketInput };

async function ask(ctx: Context, act: StoredAct | Entry['act'], payload: Payload): Promise<Taken> {
  const { movements: _, ...plain } = act as StoredAct;
  const question = { ...plain, payload: payload as unknown as Record<string, unknown> };
  const said = await wordsOf(ctx, ctx.db, question);
  const done = await writeAct(ctx.db, ctx.place.id, question, ctx.enteredAt, async () => ({
    entry: { act: question, lots: [], movements: [], changes: [] },
    tell: { said },
  }));
  return 'refused' in done ? done : { question: done.done.said };
}

async function questionOf(ctx: Context, id: string): Promise<string | null> {
  const [act] = await loadActs(ctx.db, ctx.place.id, { ids: [id], kinds: ['question'] });
  return act ? wordsOf(ctx, ctx.db, act) : null;
}

/** The picking of another device that may be this bucket, nearest in time; null when there is none. */
async function twinOf(ctx: Context, db: Db | Tx, b: BucketInput): Promise<StoredAct | null> {
  if (!b.at || !b.device || b.nothing) return null;
  const day = await loadActs(db, ctx.place.id, { kinds: ['harvest'], from: b.day as never, to: b.day as never });
  const back = await correctionsAmong(
    db,
    ctx.place.id,
    day.map((a) => a.id),
  );
  const apart = (a: StoredAct) => Math.abs(Date.parse(a.at) - Date.parse(b.at as string)) / 60_000;
  const fits = day.filter((a) => {
    if (back.has(a.id) || a.payload.rowId !== b.rowId || a.device === null || a.device === b.device) return false;
    if (b.unweighed) return a.movements.length > 0 && apart(a) <= WEIGHED_WITHIN_MIN;
    return apart(a) <= SAME_WITHIN_MIN && sameWeight(b, a.payload.readings as HarvestInput['readings']);
  });
  return fits.sort((x, y) => apart(x) - apart(y))[0] ?? null;
}

const sameWeight = (b: BucketInput, others: HarvestInput['readings'] | undefined): boolean =>
  b.readings.length > 0 &&
  b.readings.every((r) =>
    (others ?? []).some((o) => o.containerId === r.containerId && Math.abs(o.grossG - r.grossG) <= SAME_WITHIN_G),
  );

const DONE: Record<TakeInput['to'], string> = { eaten: 'Eaten', given: 'Given', sold: 'Sold', spoiled: 'Thrown away' };

/** The question itself, with both times or both numbers. */
async function wordsOf(ctx: Context, db: Db | Tx, act: Pick<StoredAct, 'payload' | 'at'>): Promise<string> {
  const q = act.payload as unknown as Payload;
  const time = localClock(act.at, ctx.place.timeZone).time;
  if (q.about === 'take') {
    const line = (await mayLeave(ctx, db, q.take))?.line ?? q.take.slug;
    const left = q.stays
      ? q.stays
      : q.left === 0
        ? 'none was left'
        : `only ${q.left} ${q.left === 1 ? 'was' : 'were'} left`;
    const who = q.take.who ? ` (${q.take.who})` : '';
    return `${DONE[q.take.to]} ${q.take.count} ${line}${who} at ${time}, but ${left}: which was it?`;
  }
  const what = bucketWords(ctx, q.bucket);
  const twin = await twinOf(ctx, db, q.bucket);
  if (!twin) return `${what} at ${time} is not weighed yet.`;
  return `Same bucket? ${what} at ${time}; ${bothMasses(gramsOf(twin))} weighed at ${localClock(twin.at, ctx.place.timeZone).time}.`;
}

function bucketWords(ctx: Context, b: BucketInput): string {
  const [row, code] = b.rowId.split('|');
  const crop = ctx.place.crops.find((c) => c.code === code)?.label ?? 'Fruit';
  const container = (id: string) => ctx.place.containers.find((c) => c.id === id)?.label.toLowerCase() ?? 'container';
  const how = b.unweighed
    ? `${counted(b.unweighed.count, container(b.unweighed.containerId))}`
    : bothMasses(b.readings.reduce((g, r) => g + r.grossG - r.tareG, 0));
  return `${crop}, row ${row}: ${how}`;
}

const gramsOf = (a: StoredAct): number =>
  a.movements.reduce((g, m) => g + ('sink' in m.from && m.from.sink === 'harvest' ? (m.grams ?? 0) : 0), 0);

export interface Question {
  id: string;
  text: string;
  day: string;
  about: 'take' | 'bucket';
  /** Jars that may still leave, of those asked for; null for a bucket. */
  left: number | null;
  count: number | null;
  /** All of them may have been there: the shelf held more than the book. */
  mayAll: boolean;
  /** Another device weighed what may be this bucket. */
  twin: boolean;
  /** The bucket has no weight of its own. */
  unweighed: boolean;
}

/** Questions nobody has answered, the oldest first. */
export async function openQuestions(ctx: Context): Promise<Question[]> {
  const acts = await loadActs(ctx.db, ctx.place.id, { kinds: ['question', 'answer'] });
  const answered = new Set(acts.filter((a) => a.kind === 'answer').map((a) => a.payload.question));
  const open = acts.filter((a) => a.kind === 'question' && !answered.has(a.id)).reverse();
  return Promise.all(open.map((a) => viewOf(ctx, a)));
}

async function viewOf(ctx: Context, act: StoredAct): Promise<Question> {
  const q = act.payload as unknown as Payload;
  const common = { id: act.id, text: await wordsOf(ctx, ctx.db, act), day: act.day, about: q.about };
  if (q.about === 'bucket')
    return {
      ...common,
      left: null,
      count: null,
      mayAll: false,
      twin: (await twinOf(ctx, ctx.db, q.bucket)) !== null,
      unweighed: q.bucket.unweighed !== null,
    };
  const there = await mayLeave(ctx, ctx.db, q.take);
  return {
    ...common,
    left: Math.min(there?.count ?? 0, q.take.count),
    count: q.take.count,
    mayAll: there !== null && there.stays === null,
    twin: false,
    unweighed: false,
  };
}

export const ANSWERS = ['none', 'left', 'all', 'line', 'same', 'other'] as const;
export interface AnswerInput {
  id: string;
  question: string;
  way: (typeof ANSWERS)[number];
  /** Line it was instead. */
  line: string | null;
  /** Net weight of the other bucket, grams. */
  grams: number | null;
}

/** What it was: the act is entered as it happened, or it did not happen. A question is answered once. */
export async function answerQuestion(ctx: Context, input: AnswerInput): Promise<Written<Told>> {
  const act = actOf(ctx, input.id, 'answer', { ...input });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const acts = await loadActs(tx, ctx.place.id, { kinds: ['question', 'answer'] });
    const question = acts.find((a) => a.kind === 'question' && a.id === input.question);
    if (!question) return { refused: 'that question is not on record here' };
    if (acts.some((a) => a.kind === 'answer' && a.payload.question === question.id))
      return { refused: 'it is answered already' };
    const made = await answered(ctx, tx, question, input);
    if (isRefusal(made)) return made;
    return { entry: { act, lots: [], movements: [], changes: [] }, first: made.first, tell: { said: made.said } };
  });
}

async function answered(
  ctx: Context,
  tx: Tx,
  question: StoredAct,
  input: AnswerInput,
): Promise<{ first: Entry | null; said: string } | Refusal> {
  const q = question.payload as unknown as Payload;
  const did = childId(input.id, 'did');
  if (input.way === 'none' || input.way === 'same') return { first: null, said: NOTHING_MORE[input.way] };
  if (q.about === 'bucket') return otherBucket(ctx, tx, { ...q.bucket, id: did }, input.grams);
  const there = await mayLeave(ctx, tx, q.take);
  const left = Math.min(there?.count ?? 0, q.take.count);
  const change: Partial<TakeInput> =
    input.way === 'left' ? { count: left } : input.way === 'line' ? { slug: input.line ?? '', lot: null } : {};
  if (input.way === 'left' && left === 0) return { refused: 'none is left of it' };
  const take = { ...q.take, ...change, id: did };
  const found = input.way === 'all' ? q.take.count - left : 0;
  const made = await takeEntry(ctx, tx, takeActOf(ctx, take), take, found);
  return isRefusal(made) ? made : { first: made.entry, said: made.tell.said };
}

const NOTHING_MORE = {
  none: 'It did not happen: nothing left the shelf.',
  same: 'One bucket: the weighed one stands.',
};

/** Another bucket after all: with its own weight, or as it was weighed. */
async function otherBucket(
  ctx: Context,
  tx: Tx,
  { unweighed, ...harvest }: BucketInput,
  grams: number | null,
): Promise<{ first: Entry; said: string } | Refusal> {
  if (unweighed && grams === null) return { refused: 'the other bucket has no weight yet: weigh it' };
  const weighed =
    unweighed && grams !== null
      ? {
          ...harvest,
          readings: [
            {
              grossG: grams,
              tareG: 0,
              containerId: '',
              containerCount: 0,
              text: String(grams / 1000),
              unit: 'kg' as const,
            },
          ],
          grades: { perfect: grams },
        }
      : harvest;
  const made = harvestOf(ctx, weighed);
  if ('refused' in made) return made;
  const { entry, tell } = await made.make(tx);
  return { first: entry, said: tell.said };
}
