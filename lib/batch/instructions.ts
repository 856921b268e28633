/**
 * The steps of a batch in short sentences, made from its figures, each caution where the act happens. Own wording; what to
 * check about jars and lids stands in lib/reference/canning-steps. Numbers are rounded for reading only.
 */
import { jarSizeOf } from '#lib/reference/jar-sizes.ts';
import { STEAM_STEPS } from '#lib/reference/steam-limit.ts';
import { fahrenheit } from '#lib/units/convert.ts';
import { counted, duration, mass } from '#lib/units/format.ts';
import { celsius } from '#lib/units/quantity.ts';
import type { BatchQuestion } from './batch-question.ts';
import type { BatchSheet } from './batch-sheet.ts';
import type { PanSheet } from './pan-sheets.ts';

export type StepPart =
  | 'prepare'
  | 'draw juice'
  | 'cook'
  | 'finish'
  | 'fill'
  | 'process'
  | 'cool'
  | 'store'
  | 'set aside'
  | 'dry';

export interface Step {
  readonly part: StepPart;
  readonly text: string;
  /** Said with the step, not after it. */
  readonly caution?: string;
}

const SCALD = 'Boiling sugar sticks and burns: long sleeves, a long spoon, nobody small at the stove.';
const STEAM = 'Lift the lid away from you: steam burns before it is seen.';
const HOT_GLASS = 'Hot jars on cold stone crack: stand them on wood or cloth, and never cold jars into boiling water.';

/** Empty of steps, but for the reason, when the fruit is not fit for food. */
export function instructions(sheet: BatchSheet, q: BatchQuestion): Step[] {
  if (!sheet.storage.food) return sheet.storage.reasons.map((text) => ({ part: 'prepare', text }));
  return [
    ...prepareSteps(sheet, q),
    ...sheet.pans.slice(0, 1).flatMap((pan) => cookSteps(pan, sheet, q)),
    ...packSteps(sheet, q),
    ...processSteps(sheet, q),
    ...storeSteps(sheet),
    ...sheet.setAsides.map((s): Step => {
      const dry = s.driedG ? ` About ${mass(s.driedG.value)} dried.` : '';
      return {
        part: 'set aside',
        text: `${words(s.material)}: about ${mass(s.freshG.value)} for ${s.use}.${dry} ${s.ask.join(' ')}`.trim(),
      };
    }),
  ];
}

const words = (id: string): string => {
  const text = id.replaceAll('-', ' ');
  return text.charAt(0).toUpperCase() + text.slice(1);
};

function prepareSteps({ preparedG, juice, split }: BatchSheet, { recipe }: BatchQuestion): Step[] {
  const steps: Step[] = [
    { part: 'prepare', text: 'Sort again: anything mouldy, rotten or from the ground goes out. Wash the fruit.' },
  ];
  if (juice && recipe.extraction) {
    const { by, simmerMin } = recipe.extraction;
    if (by === 'press')
      steps.push({
        part: 'draw juice',
        text: `Mill and press. Expect about ${mass(juice.juiceG.value)} of juice; weigh it.`,
      });
    else {
      const water = juice.waterG.value > 0 ? ` with ${mass(juice.waterG.value)} of water` : '';
      steps.push({
        part: 'draw juice',
        text: `Simmer the fruit${water} for ${simmerMin[0]} to ${simmerMin[1]} min, then let it drip through a cloth without squeezing. Weigh the juice and read it.`,
        caution: STEAM,
      });
    }
  } else
    steps.push({
      part: 'prepare',
      text: `Trim and weigh what is left: about ${mass(preparedG.value)}. Keep the trim apart.`,
    });
  if (split && split.batches > 1) {
    steps.push({
      part: 'prepare',
      text: `Cook ${split.batches} equal batches one after another: ${split.reason}. Never double one.`,
    });
  }
  return steps;
}

function cookSteps(pan: PanSheet, sheet: BatchSheet, { recipe }: BatchQuestion): Step[] {
  const each = sheet.pans.length > 1 ? 'For each batch, weigh ' : 'Weigh ';
  const inPan = pan.doses.filter((d) => !d.afterFinish && d.grams.value > 0);
  const later = pan.doses.filter((d) => d.afterFinish);
  const { finish } = recipe;
  const steps: Step[] = [
    {
      part: 'cook',
      text: `${each}${[`${mass(pan.baseG)} of ${sheet.juice ? 'juice' : 'fruit'}`, ...inPan.map((d) => `${mass(d.grams.value)} ${d.name}`)].join(', ')}.`,
    },
  ];
  if (finish.by === 'mixing') {
    steps.push({
      part: 'cook',
      text: 'Dissolve the pectin as its packet says, stir it into the sugared fruit until no grain is felt. Do not cook it.',
    });
    return steps;
  }
  if (recipe.water)
    steps.push({
      part: 'cook',
      text: 'Soften the fruit in the water before the sugar goes in; simmer, do not boil hard.',
    });
  steps.push({
    part: 'cook',
    text: 'Weigh the empty pan and write it down. Stir the sugar in until it is dissolved, wash the wall down, then boil hard.',
    caution: SCALD,
  });
  if (finish.by === 'solids') steps.push(...finishSteps(pan, sheet));
  if (finish.by === 'boil time')
    steps.push({
      part: 'finish',
      text: `Boil hard for ${duration(finish.minutes)} that stirring cannot stop, then take it off.`,
      caution: SCALD,
    });
  if (later.length > 0)
    steps.push({
      part: 'finish',
      text: `Off the heat, stir in ${later.map((d) => `${mass(d.grams.value)} ${d.name}`).join(', ')}.`,
    });
  return steps;
}

function finishSteps({ balance, boilMin }: PanSheet, { temperature }: BatchSheet): Step[] {
  const about = boilMin ? ` About ${duration(boilMin.value)} of hard boil.` : '';
  const steps: Step[] = [
    {
      part: 'finish',
      text: `Done when what is in the pan weighs ${mass(balance.finalG.value)}: ${mass(balance.evaporateG.value)} boiled off.${about}`,
    },
    { part: 'finish', text: `Next surest: the refractometer at ${balance.brix.value.toFixed(0)} °Bx.` },
  ];
  if (temperature) {
    const t = celsius(temperature.stopC.value);
    steps.push({
      part: 'finish',
      text: `Then ${t.toFixed(1)} °C (${fahrenheit(t).toFixed(1)} °F), 8 °F over boiling water here today; then the cold plate, off the heat.`,
      caution: SCALD,
    });
  }
  return steps;
}

function packSteps({ packs, driedG, acidByJar, syrup }: BatchSheet, { recipe, jar }: BatchQuestion): Step[] {
  const steps: Step[] = [];
  const { finish } = recipe;
  if (finish.by === 'drying' && driedG) {
    steps.push({
      part: 'dry',
      text: `Dry until the whole lot weighs ${mass(driedG.value)}; the clock is only a guess. Then let it stand in a jar 4 to 10 days and shake it daily: drops on the glass mean back to the dryer.`,
    });
  }
  if (finish.by === 'pack')
    steps.push({
      part: 'fill',
      text: `Freeze in one layer, then pack ${mass(finish.packG)} each and write the weight and the day on it.`,
    });
  if (syrup.length > 0)
    steps.push({
      part: 'cook',
      text: `Boil the syrup: ${syrup.map((s) => `${mass(s.grams.value)} ${s.name}`).join(', ')}.`,
      caution: SCALD,
    });
  if (recipe.process?.pack === 'hot' && finish.by === 'weight table')
    steps.push({
      part: 'cook',
      text: 'Heat the fruit through to a boil before it goes into the jars.',
      caution: STEAM,
    });
  if (finish.by === 'volume')
    steps.push({
      part: 'cook',
      text: 'Heat the juice to 71 °C (160 °F) at least; fill at a boil for the shelf.',
      caution: STEAM,
    });
  for (const line of acidByJar) steps.push({ part: 'fill', text: `Before filling: ${line.text}. Bottled juice only.` });
  if (packs?.ok && recipe.jarSizes.length > 0) {
    steps.push({ part: 'fill', text: `Expect ${counted(packs.packs.value, `${jarSizeOf(jar.size).name} jar`)}.` });
  }
  return steps;
}

function processSteps({ process, storage, pans, jar, clock }: BatchSheet, { method, recipe }: BatchQuestion): Step[] {
  if (!process) return [];
  const steps: Step[] = [];
  if (process.steriliseMin)
    steps.push({
      part: 'fill',
      text: `Boil the empty jars ${duration(process.steriliseMin.value)} and keep them hot.`,
      caution: STEAM,
    });
  else steps.push({ part: 'fill', text: 'Jars washed and kept hot, new lids, bands without rust.' });
  const each = pans[0]?.fill.jars.value;
  const count =
    each === undefined
      ? ''
      : ` ${counted(each, `${jarSizeOf(jar.size).name} jar`)} from a batch; the partial one goes to the fridge.`;
  steps.push({
    part: 'fill',
    text: `Fill ${recipe.process?.pack === 'raw' ? 'raw, cover with boiling syrup' : 'hot'}, leave ${process.headspaceIn.value} in (${Math.round(process.headspaceMm.value)} mm), let the air out, wipe the rim.${count}`,
    caution: HOT_GLASS,
  });
  if (method === 'steam') steps.push(...STEAM_STEPS.map((text): Step => ({ part: 'process', text, caution: STEAM })));
  else steps.push({ part: 'process', text: 'Water 1 to 2 inches over the lids.', caution: STEAM });
  const loads = clock && clock.loads.value > 1 ? ` ${clock.loads.value} loads.` : '';
  steps.push({
    part: 'process',
    text: `${duration(process.minutes.value)} from a full boil (${storage.process?.bandLabel}).${loads} If the boil stops, start the whole time again.`,
  });
  steps.push({
    part: 'cool',
    text: 'Heat off, lid off, wait 5 min, lift the jars straight out. Leave them 12 to 24 hours; do not retighten.',
    caution: `${STEAM} ${HOT_GLASS}`,
  });
  steps.push({
    part: 'store',
    text: 'At 12 to 24 hours bands off and look at every seal. After 24 hours an unsealed jar is discarded.',
  });
  return steps;
}

function storeSteps({ storage, householdOnly }: BatchSheet): Step[] {
  const steps: Step[] = [...storage.reasons, ...storage.cautions].map((text) => ({ part: 'store', text }));
  if (!storage.shelf) {
    for (const row of storage.keeps) {
      const place = row.store === 'shelf' ? 'airtight, dark and dry' : `in the ${row.store}`;
      steps.push({ part: 'store', text: `Keep it ${place}: ${row.days} days (${row.item}).` });
    }
  }
  if (householdOnly && storage.shelf)
    steps.push({ part: 'store', text: 'For the household and as a gift: this is no tested recipe.' });
  return steps;
}
