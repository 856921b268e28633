/** E9, generated over the real acts: the lids that are gone are the jars filled and the jars processed again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { fillBatch, processLoad } from '#lib/usecases/batch-flow.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { takeOut } from '#lib/usecases/take-out.ts';
import { demoAt, demoOn } from '#test/support/demo-database.ts';
import { CODES, filling, lit } from './damson-day.ts';

const open = demoOn('2025-09-12');
const stock = async (db: Db) => (await loadLots(db, DEMO_PLACE, { kinds: ['lids'] })).reduce((n, l) => n + l.onHand, 0);

/** A step at one of the two batches or at what was processed again of them; tried whether it may be done or not. */
const step = fc.oneof(
  fc.record({
    do: fc.constant('out' as const),
    batch: fc.nat(3),
    pieces: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 4 }),
    way: fc.constantFrom('fridge', 'freezer', 'process again', 'process again', 'discard'),
  }),
  fc.record({ do: fc.constant('canner' as const), batch: fc.nat(3), minutes: fc.constantFrom(8, 10) }),
  fc.record({ do: fc.constant('twice' as const) }),
);
const BATCHES = [...CODES, `${CODES[0]}-R`, `${CODES[1]}-R`];

describe('lids used', () => {
  it('are the fills and the jars processed again, whatever is refused or sent twice (E9)', { timeout: 120_000 }, () =>
    fc.assert(
      fc.asyncProperty(
        fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 })),
        fc.array(step, { minLength: 4, maxLength: 10 }),
        async (jars, steps) => {
          const db = await open();
          await lit(db);
          const ctx = await demoAt(db, '2025-09-13', '19:30');
          const before = await stock(db);
          let wanted = 0;
          for (const [i, code] of CODES.entries()) {
            const done = await fillBatch(ctx, { ...filling(code), jars: jars[i] as number, partialG: 0 });
            if ('done' in done) wanted += jars[i] as number;
            await processLoad(ctx, { id: `out-${code}`, codes: [code], step: 'out', minutes: 10, deviation: null });
          }
          expect(before - (await stock(db))).toBe(wanted);
          let last = async () => {};
          for (const [i, s] of steps.entries()) {
            if (s.do === 'twice') await last();
            else if (s.do === 'canner')
              await processLoad(ctx, {
                id: `canner-${i}`,
                codes: [BATCHES[s.batch] as string],
                step: 'out',
                minutes: s.minutes,
                deviation: null,
              });
            else {
              const input = { id: `out-step-${i}`, code: BATCHES[s.batch] as string, pieces: s.pieces, way: s.way };
              const done = await takeOut(ctx, input);
              if ('done' in done && s.way === 'process again') wanted += s.pieces.length;
              last = async () => void (await takeOut(ctx, input));
            }
            expect(before - (await stock(db))).toBe(wanted);
          }
          const used = await db.movement.findMany({ where: { placeId: DEMO_PLACE, toSink: 'used', day: ctx.today } });
          expect(used.reduce((n, m) => n + m.qty, 0)).toBe(wanted);
        },
      ),
      { numRuns: 8 },
    ),
  );
});
