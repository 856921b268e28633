/**
 * What a place is fitted with, as people are asked for it: kitchens, burners, pans, canners, dryers, stores, containers, jars,
 * people. One table says what each has, in which unit it is asked and how much of the stored unit that is; the schema
 * of a form and the form itself are both read off it.
 */
import { z } from 'zod';
import { JAR_SIZES } from '#lib/reference/jar-sizes.ts';
import { number, optional, tick, word } from './fields.ts';

export const FITTING_KINDS = [
  'kitchen',
  'burner',
  'pan',
  'canner',
  'dryer',
  'store',
  'container',
  'jar',
  'person',
] as const;
export type FittingKind = (typeof FITTING_KINDS)[number];
/** What stands in a kitchen and goes with it. */
export const KITCHEN_KINDS: readonly FittingKind[] = ['burner', 'pan', 'canner', 'dryer'];
export const STORE_KINDS = ['shelf', 'ambient', 'fridge', 'freezer', 'dry'] as const;
export type StoreKind = (typeof STORE_KINDS)[number];

export type FieldSpec = { name: string; label: string; hint?: string } & (
  | { as: 'word'; longest: number }
  /** `per` stored units to one asked for: 1000 mL to the litre. Stored whole, but for a share, which is kept as a fraction. */
  | { as: 'number'; unit: string; per: number; min: number; max: number; optional?: true; share?: true }
  | { as: 'choice'; options: readonly { value: string; label: string }[] }
  | { as: 'tick' }
);

const named = (hint: string): FieldSpec => ({
  name: 'label',
  label: 'What you call it',
  hint,
  as: 'word',
  longest: 60,
});
const amount = (
  name: string,
  label: string,
  unit: string,
  per: number,
  [min, max]: readonly [number, number],
  more: { hint?: string; optional?: true } = {},
): FieldSpec => ({ name, label, as: 'number', unit, per, min, max, ...more });

const share = (name: string, label: string, hint?: string): FieldSpec => ({
  name,
  label,
  as: 'number',
  unit: '%',
  per: 0.01,
  min: 0,
  max: 100,
  share: true,
  ...(hint ? { hint } : {}),
});

/** What the household reckons with until its own records teach better; every one is a habit or an estimate, none a published figure. */
export const HABIT_FIELDS: readonly FieldSpec[] = [
  amount('panLossG', 'Left on pan and tools, a batch', 'g', 1, [0, 2000], {
    hint: 'An estimate is 60 to 150 g. Weighed batches replace it',
  }),
  share('invertedShare', 'Sugar inverted while it cooks', 'An estimate is 30 %: each gram of it weighs 5 % more'),
  share('lidMargin', 'Lids bought beyond the fills planned'),
  share('breakage', 'Jars broken in a year'),
  share('reserve', 'Jars kept in reserve'),
  share('jarsBack.eaten', 'Glass that comes back: eaten here'),
  share('jarsBack.given', 'Glass that comes back: given away'),
  share('jarsBack.sold', 'Glass that comes back: sold'),
];

const price = (name: string, label: string, of: string, per: number): FieldSpec => ({
  name: `prices.${name}`,
  label: `${label}, ${of}`,
  as: 'number',
  unit: '',
  per,
  min: 0,
  max: 1000,
  optional: true,
  share: true,
});
/** Grams of a litre of bottled lemon juice: 244 g a US cup (USDA SR26). */
const LEMON_G_PER_L = 244 / 0.2365882365;

/** What bought goods cost; kept in hundredths of the money by the kilogram, lids by the piece. */
export const PRICE_FIELDS: readonly FieldSpec[] = [
  { name: 'prices.currency', label: 'Money', hint: '“£”, “€”, “kr”', as: 'word', longest: 4 },
  price('sugar', 'Sugar', 'a kilogram', 100),
  price('lemon-juice-bottled', 'Bottled lemon juice', 'a litre', (100 * 1000) / LEMON_G_PER_L),
  price('citric-acid', 'Citric acid', '100 g', 1000),
  price('pectin-powder', 'Bought pectin powder', '100 g', 1000),
  price('pectin-low-methoxyl', 'Bought low-sugar pectin', '100 g', 1000),
  price('perLid', 'Lids', 'each', 100),
];

const SHELVES: readonly FieldSpec[] = [
  amount('bays', 'Bays side by side', '', 1, [1, 60]),
  amount('shelvesPerBay', 'Shelves in each bay', '', 1, [1, 20]),
  amount('widthMm', 'Width of a shelf', 'cm', 10, [10, 500]),
  amount('depthMm', 'Depth of a shelf', 'cm', 10, [5, 150]),
  amount('clearMm', 'Clear height above a shelf', 'cm', 10, [5, 150]),
  amount('maxGPerShelf', 'The most a shelf may bear', 'kg', 1000, [1, 500], {
    hint: 'A half-pint of jam weighs about half a kilogram with its glass',
  }),
];
const TEMPERATURES: readonly FieldSpec[] = [
  amount('lowC', 'Coldest it gets', '°C', 1, [-40, 40], { optional: true }),
  amount('highC', 'Warmest it gets', '°C', 1, [-40, 45], { optional: true }),
];
const ROOM_OF: Readonly<Record<StoreKind, readonly FieldSpec[]>> = {
  shelf: SHELVES,
  ambient: [amount('crates', 'Crates it holds', '', 1, [1, 2000])],
  fridge: [amount('litres', 'Room for jars', 'L', 1, [1, 5000])],
  freezer: [amount('litres', 'Room inside', 'L', 1, [1, 10_000])],
  dry: [amount('litres', 'Room inside', 'L', 1, [1, 10_000])],
};
export const STORE_NAMES: Readonly<Record<StoreKind, string>> = {
  shelf: 'Shelves for jars',
  ambient: 'Cool place for fruit',
  fridge: 'Fridge',
  freezer: 'Freezer',
  dry: 'Dry cupboard',
};

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/** What the rest of the place decides about a form: its jars for canning (loads of a canner), and the kind of a store. */
export interface FittingAround {
  jars: readonly { code: string; label: string }[];
  storeKind: StoreKind | null;
}

/** The fields of a kind, in the order they are asked. */
export function fieldsOf(kind: FittingKind, around: FittingAround): readonly FieldSpec[] {
  switch (kind) {
    case 'kitchen':
      return [
        named('“Home kitchen”'),
        amount('altitudeM', 'How high above the sea', 'm', 1, [-400, 5000], {
          hint: 'Every setting point and process time hangs on it. 100 ft is 30 m',
        }),
        { name: 'main', label: 'Work is reckoned for this kitchen unless another is chosen', as: 'tick' },
      ];
    case 'burner':
      return [
        amount('watts', 'Power', 'kW', 1000, [0.3, 40]),
        { name: 'outdoors', label: 'Stands outdoors', as: 'tick' },
      ];
    case 'pan':
      return [
        named('“10 L wide pan”'),
        amount('ml', 'Holds to the brim', 'L', 1000, [0.5, 200]),
        amount('diameterMm', 'Across the top', 'cm', 10, [8, 120], { optional: true }),
        amount('maxFillPercent', 'Filled for jam at most', '%', 1, [10, 90], {
          optional: true,
          hint: 'Jam foams: half full is common practice. Empty for a pan no jam is boiled in',
        }),
        amount('evapGPerMin', 'Boils off', 'g/min', 1, [1, 400], {
          optional: true,
          hint: 'Weigh a pan of water, boil it hard ten minutes, weigh again. Empty until you have',
        }),
      ];
    case 'canner':
      return [
        named('“Big canner”'),
        {
          name: 'method',
          label: 'How it heats',
          as: 'choice',
          options: [
            { value: 'boiling-water', label: 'boiling water' },
            { value: 'steam', label: 'steam' },
          ],
        },
        ...around.jars.map((j) =>
          amount(`loads.${j.code}`, `Jars to a load, ${j.label}`, '', 1, [0, 100], { optional: true }),
        ),
        amount('heatUpS', 'Cold to boiling', 'min', 60, [1, 180]),
        amount('reheatS', 'Back to boiling between loads', 'min', 60, [0, 120]),
      ];
    case 'dryer':
      return [
        amount('trays', 'Trays', '', 1, [1, 200]),
        amount('trayCm2', 'Area of a tray', 'm²', 10_000, [0.01, 4]),
        amount('gPerTray', 'Prepared fruit on a tray', 'kg', 1000, [0.05, 20]),
        amount('centiC', 'Set to', '°C', 100, [25, 80]),
      ];
    case 'store':
      return [named('“Chest freezer”'), ...ROOM_OF[around.storeKind ?? 'shelf'], ...TEMPERATURES];
    case 'container':
      return [
        named('“Blue bucket”'),
        amount('tareG', 'Empty weight', 'kg', 1000, [0, 20]),
        amount('volumeMl', 'Holds', 'L', 1000, [0.05, 500]),
      ];
    case 'jar':
      return [
        named('“Half-pint, straight sided”'),
        {
          name: 'size',
          label: 'Size in the process tables',
          as: 'choice',
          options: [...JAR_SIZES.map((s) => ({ value: s.size, label: s.name })), { value: '', label: 'none of them' }],
        },
        amount('fillMl', 'Holds when filled', 'mL', 1, [20, 10_000]),
        amount('pitchMm', 'Room it takes across', 'mm', 1, [20, 400]),
        amount('heightMm', 'Height with its lid', 'mm', 1, [20, 600]),
        { name: 'canning', label: 'Made for canning, with a new lid each time', as: 'tick' },
      ];
    case 'person':
      return [
        named('First name'),
        { name: 'role', label: 'Does mostly', hint: '“stove”, “picking”', as: 'word', longest: 40 },
        ...WEEKDAYS.map((day, i) => amount(`minutes.${i}`, `Kitchen hours, ${day}`, 'h', 60, [0, 16])),
      ];
  }
}

/** Stored values by field name; a name with a dot is one of a list: `loads.HP`, `minutes.0`. */
export type FittingValues = Readonly<Record<string, string | number | boolean | null>>;

/** The schema of a form with these fields: text in, whole stored units out. */
export const fittingForm = (fields: readonly FieldSpec[]): z.ZodType<FittingValues> =>
  z.object(Object.fromEntries(fields.map((f) => [f.name, schemaOf(f)]))) as unknown as z.ZodType<FittingValues>;

function schemaOf(f: FieldSpec): z.ZodType<string | number | boolean | null> {
  switch (f.as) {
    case 'word':
      return word(f.label.toLowerCase(), f.longest);
    case 'tick':
      return tick;
    case 'choice':
      return z
        .string()
        .refine((v) => f.options.some((o) => o.value === v), `${f.label.toLowerCase()}: choose one of the list`)
        .transform((v) => v || null);
    case 'number': {
      const asked = number({ what: f.label.toLowerCase(), min: f.min, max: f.max });
      const typed = asked.transform((n) => (f.share ? n * f.per : Math.round(n * f.per)));
      return f.optional ? optional(typed) : typed;
    }
  }
}

/** A field as a form shows it: how it is asked, and what stands in it. */
export interface FieldShown {
  name: string;
  label: string;
  hint: string | null;
  as: FieldSpec['as'];
  unit: string | null;
  required: boolean;
  options: readonly { value: string; label: string }[];
  text: string;
}

/** The fields with what is stored in them, or with what was typed into a form that was refused. */
export const fieldsShown = (
  fields: readonly FieldSpec[],
  stored: FittingValues,
  typed: Readonly<Record<string, string | undefined>>,
): FieldShown[] =>
  fields.map((f) => ({
    name: f.name,
    label: f.label,
    hint: f.hint ?? null,
    as: f.as,
    unit: f.as === 'number' && f.unit ? f.unit : null,
    required: f.as === 'word' || (f.as === 'number' && !f.optional),
    options: f.as === 'choice' ? f.options : [],
    text: typed.refused ? (typed[f.name] ?? '') : shownText(f, stored[f.name]),
  }));

/** What a field shows of a stored value, in the unit that is asked for. */
export function shownText(f: FieldSpec, stored: string | number | boolean | null | undefined): string {
  if (stored === null || stored === undefined) return '';
  return f.as === 'number' ? String(Number((Number(stored) / f.per).toFixed(3))) : String(stored);
}
