/** What stood at Wrenlatch on 1 January 2025, and what was bought after. */

import { receiveSupply } from '#lib/ledger/acts/receive-supply.ts';
import { childId } from '#lib/ledger/entry.ts';
import { newLot } from '#lib/ledger/lot.ts';
import { batchCode, freeReceiptNumber } from '#lib/ledger/lot-code.ts';
import { addDays, type PlainDate, plainDate } from '#lib/units/plain-date.ts';
import { demoId } from './demo-ids.ts';
import { DEMO_LINES, foodOfLine, isForHousehold, isGlass, isShelved, lotKindOf } from './lines.ts';
import { AT_END, OPENING_LIDS, OPENING_SUGAR_G, openingEmpties, type Supply } from './season-events.ts';
import { type SeasonState, seasonAct, write } from './season-state.ts';

export function playOpening(s: SeasonState, day: PlainDate): void {
  const room = (code: string) => demoId(s.placeId, 'room', code);
  for (const [supply, code] of openingSupplies()) playReceipt(s, `opening-${supply.item}`, supply, day, code);
  for (const line of DEMO_LINES.filter((l) => l.carry > 0)) {
    const made = plainDate(`2024-${line.makes[0]?.[0]}`);
    const act = seasonAct(s, `opening-${line.code}`, 'opening', day, '09:00');
    const glass = isGlass(line);
    const lot = newLot({
      id: childId(act.id, 'jars'),
      code: batchCode(made, line.code, 0),
      kind: lotKindOf(line),
      label: line.label,
      unit: glass ? 'jar' : 'pack',
      item: line.jar,
      foodId: foodOfLine(line),
      recipeId: line.recipeId,
      parentActId: act.id,
      madeOn: made,
      since: `${made}T20:00:00.000Z`,
      bestBefore: addDays(made, 365),
      roomId: room(isShelved(line) ? 'stillroom' : (line.shelves[0] as string)),
      address: isShelved(line) ? (line.shelves[0] as string) : null,
      process: isShelved(line) ? 'as tested' : null,
      seal: isShelved(line) ? 'sealed' : null,
      household: isForHousehold(line),
      details: { netG: line.netG, from: 'carried over from 2024' },
    });
    const entry = {
      act,
      lots: [lot],
      movements: [
        {
          from: { sink: 'opening' as const },
          to: { lot: lot.id },
          qty: line.carry,
          grams: line.carry * line.netG,
          piece: null,
        },
      ],
      changes: [],
    };
    if (write(s, entry))
      s.pieces.set(
        lot.id,
        Array.from({ length: line.carry }, (_, i) => i + 1),
      );
  }
}

const openingSupplies = (): [Supply, string?][] => [
  [{ item: 'sugar', what: 'SUG', label: 'Sugar', kind: 'supply', unit: 'g', qty: OPENING_SUGAR_G }],
  [
    {
      item: 'lemon-juice',
      what: 'LEM',
      label: 'Bottled lemon juice',
      kind: 'supply',
      unit: 'ml',
      qty: 1500,
      foodId: 'lemon-juice',
    },
  ],
  [{ item: 'citric-acid', what: 'CIT', label: 'Citric acid', kind: 'supply', unit: 'g', qty: 220 }],
  [{ item: 'almonds', what: 'ALM', label: 'Almonds', kind: 'supply', unit: 'g', qty: 400 }],
  [{ item: 'lid-regular', what: 'LID', label: 'Lids, regular', kind: 'lids', unit: 'lid', qty: OPENING_LIDS }],
  [{ item: 'lid-wide', what: 'LDW', label: 'Lids, wide', kind: 'lids', unit: 'lid', qty: 60 }],
  [
    {
      item: 'lid-regular-old',
      what: 'LDX',
      label: 'Lids, regular, over five years old',
      kind: 'lids',
      unit: 'lid',
      qty: 22,
      flags: ['over five years old'],
    },
  ],
  [
    {
      item: 'apple-powder',
      what: 'APC',
      label: 'Dried apple peel and core powder',
      kind: 'supply',
      unit: 'g',
      qty: 300,
      foodId: 'apple-dessert',
    },
    'S-24275-APC-1',
  ],
  ...(Object.keys(AT_END.empties).map((jar): [Supply] => [
    {
      item: jar,
      what: `J${jar}`.slice(0, 3),
      label: `Empty jars, ${jar}`,
      kind: 'empties',
      unit: 'jar',
      qty: openingEmpties(jar),
    },
  ]) as [Supply][]),
];

export function playReceipt(s: SeasonState, key: string, supply: Supply, day: PlainDate, code?: string): void {
  const opening = key.startsWith('opening');
  const kind = code?.startsWith('S-') ? 'set-aside' : supply.kind;
  const taken = [...s.book.lots.values()].filter((l) => l.madeOn === day).map((l) => l.code);
  write(
    s,
    receiveSupply({
      act: seasonAct(s, key, opening ? 'opening' : 'receive', day, '09:00', {
        supplier: opening ? null : 'a grower-supplier',
        qty: supply.qty,
      }),
      kind,
      item: supply.item,
      what: supply.what,
      number: freeReceiptNumber(taken, day, supply.what),
      label: supply.label,
      unit: supply.unit,
      qty: supply.qty,
      roomId: demoId(s.placeId, 'room', supply.kind === 'fruit' ? 'fruit-store' : 'dry-cupboard'),
      ...(supply.foodId ? { foodId: supply.foodId } : {}),
      ...(code ? { code } : {}),
      flags: supply.flags ?? [],
      details: kind === 'set-aside' ? { strength: 'untested', seedsOut: true, state: 'dry' } : {},
    }),
  );
}
