/** What a change would do, in words: only what differs clearly from the same seasons without it. */
import { twoDigits } from '#lib/forecast/words.ts';
import { longDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { WHAT_IF_SEASONS } from './forecast-run.ts';
import { nothingToForecast, seasonForecast } from './forecast-season.ts';
import type { WhatIf, WhatIfFigure } from './season-what-if.ts';
import { seasons } from './season-words.ts';

export interface WhatIfRow {
  id: string;
  title: string;
  means: string;
  says: string[];
  /** Every figure, also those without a clear difference. */
  figures: { name: string; before: string; change: string }[];
}
export interface WhatIfView {
  state: 'empty' | 'waiting' | 'ready';
  whole: boolean;
  answer: string;
  sub: string;
  rows: WhatIfRow[];
}

export async function readWhatIf(ctx: Context): Promise<WhatIfView> {
  const { input, summary, whole } = await seasonForecast(ctx);
  const sub = `As of ${longDate(input.today)}. Each change is tried on the same ${WHAT_IF_SEASONS} drawn seasons as the year without it.`;
  if (nothingToForecast(input))
    return {
      state: 'empty',
      whole: true,
      answer: 'Nothing to change yet',
      sub: 'Changes are tried on your own crops and jars.',
      rows: [],
    };
  if (!summary || !whole) return { state: 'waiting', whole: false, answer: 'Trying what if', sub, rows: [] };
  const rows = summary.whatIf.map(rowOf);
  const clear = rows.filter((r) => r.says.length > 0).length;
  return {
    state: 'ready',
    whole,
    answer: `${clear} of ${rows.length} changes would make a clear difference`,
    sub,
    rows,
  };
}

const rowOf = (w: WhatIf): WhatIfRow => ({
  id: w.id,
  title: w.title,
  means: w.means,
  says: w.figures.filter((f) => f.clear && Math.abs(f.mean) >= leastShown(f)).map(say),
  figures: w.figures.map((f) => ({
    name: NAMES[f.name]?.table ?? f.name,
    before: isShare(f) ? seasons(clamp(f.before)) : twoDigits(f.before),
    change: changeText(f),
  })),
});

interface Name {
  table: string;
  unit: string;
  what: string;
}
const NAMES: Record<string, Name> = {
  made: { table: 'Made, jars and packs', unit: ' jars and packs', what: 'made' },
  used: { table: 'Used, jars and packs', unit: ' jars and packs', what: 'used' },
  unmet: { table: 'Wanted and not there', unit: ' jars and packs', what: 'wanted and not there' },
  expired: { table: 'Half a year past their day', unit: ' jars and packs', what: 'half a year past their day' },
  fruitLostKg: { table: 'Fruit not used, kg', unit: ' kg', what: 'of fruit not used' },
  sugarKg: { table: 'Sugar, kg', unit: ' kg', what: 'of sugar' },
  'over shelf': { table: 'Shelf fills up', unit: '', what: 'the shelf fills up' },
  'over freezer': { table: 'Freezer fills up', unit: '', what: 'the freezer fills up' },
};

const isShare = (f: WhatIfFigure): boolean => f.name.startsWith('over ');
const clamp = (p: number): number => Math.min(1, Math.max(0, p));
/** Smaller changes than these are not worth a sentence, however clear. */
const leastShown = (f: WhatIfFigure): number => (isShare(f) ? 0.03 : 0.5);

function say(f: WhatIfFigure): string {
  const name = NAMES[f.name];
  if (isShare(f)) return `${name?.what} ${seasons(clamp(f.before + f.mean))} (without it ${seasons(clamp(f.before))})`;
  return `${signed(f.mean)}${name?.unit} ${name?.what}${margin(f, ' (between ', ')')}`;
}

function changeText(f: WhatIfFigure): string {
  if (!f.moved) return 'no season differs';
  if (!f.clear) return 'no clear difference';
  return isShare(f) ? seasons(clamp(f.before + f.mean)) : `${signed(f.mean)}${margin(f, ' (', ')')}`;
}
/** 19 draws of 20 of the mean change; paired seasons make it narrow. Left out where its ends read the same. */
function margin(f: WhatIfFigure, open: string, close: string): string {
  const [low, high] = [f.mean - 1.96 * f.se, f.mean + 1.96 * f.se]
    .map((x) => Math.abs(x))
    .sort((a, b) => a - b)
    .map(twoDigits);
  return low === high ? '' : `${open}${low} and ${high}${close}`;
}
const signed = (x: number): string => `${x < 0 ? '-' : '+'}${twoDigits(Math.abs(x))}`;
