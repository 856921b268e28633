import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COUNT_REASONS, settleCount } from '#lib/ledger/acts/settle-count.ts';
import { takePieces } from '#lib/ledger/acts/take-pieces.ts';
import { isRefusal } from '#lib/ledger/entry.ts';
import type { Movement } from '#lib/ledger/movement.ts';
import { pieceStates, piecesHere } from '#lib/ledger/pieces.ts';
import { isPlaced, whereabouts } from '#lib/ledger/whereabouts.ts';
import { act } from '#test/support/small-place.ts';

const LOT = { id: 'lot', code: '25253-CRB-A', label: 'Crabapple jelly', details: { netG: 311 } };
const filled = (n: number): Movement => ({
  from: { sink: 'found' },
  to: { lot: 'lot' },
  qty: n,
  grams: n * 311,
  piece: null,
});
const here = (movements: readonly Movement[]) => piecesHere(pieceStates('lot', movements));
const counted = (movements: readonly Movement[], difference: number, reason: (typeof COUNT_REASONS)[number]) =>
  settleCount({ difference, reason, lots: [{ lot: LOT, pieces: here(movements) }], glass: 'empties' });

describe('a count put in the book', () => {
  it('leaves on hand what was counted, whatever was taken before, and every jar in one place (stories E2, E3)', () => {
    let settled = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.array(fc.constantFrom('eaten' as const, 'given' as const, 'sold' as const), { maxLength: 20 }),
        fc.integer({ min: 0, max: 25 }),
        fc.constantFrom(...COUNT_REASONS),
        (made, uses, count, reason) => {
          const movements = [filled(made)];
          for (const to of uses.slice(0, made)) {
            const piece = here(movements)[0];
            if (piece !== undefined)
              movements.push(
                ...takePieces({ act: act('t'), to, pieces: [{ lot: LOT, piece }], returns: null }).movements,
              );
          }
          const expected = here(movements).length;
          const answer = counted(movements, count - expected, reason);
          if (isRefusal(answer)) {
            expect(reason === 'found' ? count < expected : count > expected).toBe(true);
            return;
          }
          settled += 1;
          const after = [...movements, ...answer];
          expect(here(after)).toHaveLength(reason === 'miscounted' ? expected : count);
          const all = whereabouts(
            LOT,
            after.map((m) => ({ ...m, day: '2026-01-15', who: null })),
          );
          expect(new Set(all.map((j) => j.code)).size).toBe(all.length);
          const found = count > expected && reason === 'found' ? count - expected : 0;
          expect(all).toHaveLength(made + found);
          const back = answer.filter((m) => 'lot' in m.to && m.to.lot === 'empties').reduce((n, m) => n + m.qty, 0);
          expect(back).toBe(reason === 'eaten' && count < expected ? expected - count : 0);
        },
      ),
      { numRuns: 1000, seed: 2 },
    );
    expect(settled).toBeGreaterThan(300);
  });

  it('takes the oldest numbers first', () => {
    expect((counted([filled(5)], -2, 'missing') as Movement[]).map((m) => m.piece)).toEqual([1, 2]);
  });
});

describe('where a jar is', () => {
  const given = (who: string | null): Movement & { day: string; who: string | null } => ({
    from: { lot: 'lot' },
    to: { sink: 'given' },
    qty: 1,
    grams: 311,
    piece: 1,
    day: '2025-12-06',
    who,
  });

  it('is known when it is here, or went to somebody who is named', () => {
    const where = (who: string | null) =>
      whereabouts(LOT, [{ ...filled(2), day: '2025-09-10', who: null }, given(who)]).map((j) => j.where);
    expect(where('the choir')).toEqual([
      { at: 'gone', sink: 'given', day: '2025-12-06', who: 'the choir' },
      { at: 'here' },
    ]);
    expect(where('the choir').map(isPlaced)).toEqual([true, true]);
    expect(where(null).map(isPlaced)).toEqual([false, true]);
  });
});
