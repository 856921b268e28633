/**
 * What the numbers rest on, in order, and what the program will not say, each with its figure. Figures of the checks come
 * from the accuracy table, which a test keeps true; the others name their standing.
 */
import { ACCURACY } from '#lib/reference/accuracy.ts';

export interface RestsOn {
  what: string;
  why: string;
}
export interface WillNotSay {
  what: string;
  instead: string;
  figure: string;
  source: string;
}
export interface TrustView {
  finish: RestsOn[];
  processing: RestsOn[];
  willNotSay: WillNotSay[];
  accuracy: { id: string; quantity: string; rows: number; mean: string; worst: string; unit: string; note: string }[];
}

/** Order of trust for the finish. Source: comparison of the checks; the mass balance is arithmetic, the others are measured. */
export const FINISH_ORDER: readonly RestsOn[] = [
  {
    what: 'Pan weight',
    why: 'Soluble solids over the target share. No altitude, barometer, thermometer or inversion bears on it.',
  },
  { what: 'Refractometer', why: 'Reads the share itself, on a cooled drop; 1 °Bx of error is 1.5 % of the pan.' },
  {
    what: 'Temperature above today’s boiling water',
    why: '0.5 °C either way is 2.1 to 2.4 °Bx; a barometer 20 hPa low and ignored is another 2.3 (computed).',
  },
  { what: 'Clock', why: '±30 % until this pan was weighed at the boil (estimate).' },
];

/** What decides about the shelf, in order. */
export const PROCESS_ORDER: readonly RestsOn[] = [
  {
    what: 'A printed row',
    why: 'Product, pack, jar, method and altitude band, looked up whole. Nothing is read between rows.',
  },
  { what: 'A calibrated meter', why: 'Two buffers within 0.1 of their value, one on each side of pH 4.6.' },
  { what: 'The seal, tried', why: 'By hand, 12 to 24 hours after; a lid that gives goes to the fridge.' },
];

export const WILL_NOT_SAY: readonly WillNotSay[] = [
  {
    what: 'That a jar is fit to eat',
    instead: 'It says which printed process was kept, what the meter read and whether the seal held.',
    figure: 'No figure can',
    source: 'Rule of this project',
  },
  {
    what: 'A process time between, above or beside the printed rows',
    instead: 'It names the edge that was crossed and offers fridge, freezer or dryer.',
    figure: '0 minutes made up',
    source: 'Rule of this project',
  },
  {
    what: 'That a predicted pH clears a jar',
    instead: 'Only a reading with both buffers does. The prediction is for flavour and set.',
    figure: '24 fruits: 0.26 off (root mean square), 0.13 too acid on average, at worst 0.59 too acid',
    source: 'Checked against published pH',
  },
  {
    what: 'That the printed acid dose is enough for every fig',
    instead: 'The dose is a floor, and a meter reading is asked for.',
    figure: 'Above about pH 5 the sum ends at up to 5.3, not 4.6',
    source: 'Computed; no measured pair was found',
  },
  {
    what: 'How firm a home powder will set',
    instead: 'A first guess, then the cold plate decides. It never opens a shelf.',
    figure: '±40 %',
    source: 'Estimate; pectin of 48 of 67 fruits is from memory',
  },
  {
    what: 'That too little pectin on paper means a runny jelly',
    instead: 'The pectin sums run low: read the plate.',
    figure: '4 of 5 printed jellies come out short on paper',
    source: 'Checked against printed recipes',
  },
  {
    what: 'The minute a pan is done',
    instead: 'A clock with its band; the pan is weighed.',
    figure: '±30 %, never compared with a measured batch but your own',
    source: 'Estimate',
  },
  {
    what: 'A finish by temperature above 65 °Bx',
    instead: 'The weight of the pan. Published tables disagree there, and the program follows the lower ones.',
    figure: '2 K apart at 70 °Bx',
    source: 'Published tables compared',
  },
  {
    what: 'The exact number of jars',
    instead: 'One jar in five more or less; lids are reckoned with a margin.',
    figure: 'Of 5 printed yields, 3 within half a jar, 2 low by 0.6 to 0.7',
    source: 'Checked against printed recipes',
  },
  {
    what: 'That low water alone keeps a jam',
    instead: 'A jam keeps by acid, heat and seal. Water activity skips no process.',
    figure: '65 °Bx stands on the 0.85 line, ±0.03',
    source: 'Published limits; error estimated',
  },
  {
    what: 'What the next season will bear',
    instead: 'A fan and seasons in ten. It narrows with your own pickings.',
    figure: 'Starting spreads are ±40 % guesses; ranges were checked on simulated seasons only, not on real orchards',
    source: 'From memory, weak',
  },
];

const shown = (x: number): string => (x === 0 ? '0' : x < 1e-4 ? x.toExponential(0) : String(x));

export const trustView = (): TrustView => ({
  finish: [...FINISH_ORDER],
  processing: [...PROCESS_ORDER],
  willNotSay: [...WILL_NOT_SAY],
  accuracy: ACCURACY.map((a) => ({
    id: a.quantity,
    quantity: a.quantity,
    rows: a.rows,
    mean: shown(a.mean),
    worst: shown(a.worst),
    unit: a.unit === '1' ? '' : a.unit,
    note: [
      a.misses > 0 ? `${a.misses} known ${a.misses === 1 ? 'miss' : 'misses'}` : null,
      a.fitted ? `fitted: ${a.fitted}` : null,
      a.memory ? `from memory: ${a.memory}` : null,
    ]
      .filter((t) => t !== null)
      .join('; '),
  })),
});
