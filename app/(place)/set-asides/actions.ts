'use server';
import {
  BLEND_LISTS,
  blendForm,
  clotForm,
  cupForm,
  cutForm,
  dryForm,
  herbForm,
  moveForm,
  packForm,
  pressForm,
  readyForm,
  shakeForm,
  strainForm,
  sweetForm,
  vinegarForm,
  wayForm,
  weighForm,
  zestForm,
} from '#lib/forms/set-aside.ts';
import { packDried } from '#lib/usecases/pack-dried.ts';
import {
  endConditioning,
  moveDrying,
  shakeJar,
  startDrying,
  takeWayOut,
  weighDrying,
} from '#lib/usecases/set-aside-acts.ts';
import { bringHerbs, cutForDrying, pressFruit, zestFruit } from '#lib/usecases/set-aside-makes.ts';
import { startVinegar, strainVinegar, sweetenPeel } from '#lib/usecases/set-aside-sweets.ts';
import { testByAlcohol, tryByCup } from '#lib/usecases/strength-tests.ts';
import { runAct, saying } from '../../run-act.ts';

export const dry = async (data: FormData): Promise<void> =>
  runAct(data, { form: dryForm, run: startDrying, back: pathOf(data) });
export const move = async (data: FormData): Promise<void> =>
  runAct(data, { form: moveForm, run: moveDrying, back: pathOf(data) });
export const weigh = async (data: FormData): Promise<void> =>
  runAct(data, { form: weighForm, run: weighDrying, back: pathOf(data) });
export const shake = async (data: FormData): Promise<void> =>
  runAct(data, { form: shakeForm, run: shakeJar, back: pathOf(data) });
export const ready = async (data: FormData): Promise<void> =>
  runAct(data, { form: readyForm, run: endConditioning, back: pathOf(data) });
export const clot = async (data: FormData): Promise<void> =>
  runAct(data, { form: clotForm, run: testByAlcohol, back: pathOf(data) });
export const cup = async (data: FormData): Promise<void> =>
  runAct(data, { form: cupForm, run: tryByCup, back: pathOf(data) });
export const way = async (data: FormData): Promise<void> =>
  runAct(data, { form: wayForm, run: takeWayOut, back: pathOf(data) });
export const press = async (data: FormData): Promise<void> =>
  runAct(data, { form: pressForm, run: pressFruit, back: '/set-asides/press', next: toTheList });
export const cut = async (data: FormData): Promise<void> =>
  runAct(data, { form: cutForm, run: cutForDrying, back: '/set-asides/dry', next: toTheList });
export const zest = async (data: FormData): Promise<void> =>
  runAct(data, { form: zestForm, run: zestFruit, back: '/set-asides/dry', next: toTheList });
export const herbs = async (data: FormData): Promise<void> =>
  runAct(data, { form: herbForm, run: bringHerbs, back: '/set-asides/dry', next: toTheList });
export const sweeten = async (data: FormData): Promise<void> =>
  runAct(data, { form: sweetForm, run: sweetenPeel, back: pathOf(data) });
export const vinegar = async (data: FormData): Promise<void> =>
  runAct(data, { form: vinegarForm, run: startVinegar, back: pathOf(data) });
export const strain = async (data: FormData): Promise<void> =>
  runAct(data, { form: strainForm, run: strainVinegar, back: pathOf(data) });
export const pack = async (data: FormData): Promise<void> =>
  runAct(data, { form: packForm, run: packDried, back: pathOf(data) });
export const blend = async (data: FormData): Promise<void> =>
  runAct(data, { form: blendForm, run: packDried, back: '/set-asides/blend', next: toTheList, lists: BLEND_LISTS });

const pathOf = (data: FormData): string => `/set-asides/${encodeURIComponent(String(data.get('code') ?? ''))}`;
const toTheList = (done: { said: string }): string => saying('/set-asides', done);
