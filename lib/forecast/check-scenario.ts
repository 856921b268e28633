import { RING_WEEKS, type Scenario } from './scenario.ts';

const need = (ok: boolean, what: string): void => {
  if (!ok) throw new RangeError(what);
};
const within = (at: number, n: number, none = false): boolean =>
  Number.isInteger(at) && at < n && at >= (none ? -1 : 0);
const unique = (ids: readonly string[], what: string): void =>
  need(new Set(ids).size === ids.length, `Two ${what} share an id, so they would share their random numbers`);

/** The limits the counters of `simulate` are built for. Throws RangeError naming the record and the limit. */
export function checkScenario(sc: Scenario): void {
  need(
    Number.isInteger(sc.weeks) && sc.weeks >= 1 && sc.weeks <= 104,
    `${sc.weeks} weeks: between 1 and 104 can be simulated`,
  );
  need(sc.hours.length >= sc.weeks, `Kitchen hours are given for ${sc.hours.length} of ${sc.weeks} weeks`);
  unique(
    sc.products.map((p) => p.id),
    'products',
  );
  unique(
    sc.crops.map((c) => c.id),
    'crops',
  );
  unique(
    sc.events.map((e) => e.id),
    'events',
  );
  unique(
    sc.planned.map((b) => b.id),
    'planned batches',
  );
  for (const c of sc.containers) need(within(c.lid, sc.lids.length, true), `${c.id}: there is no lid ${c.lid}`);
  for (const p of sc.products) checkProduct(p, sc);
  for (const lot of sc.lots)
    need(within(lot.product, sc.products.length) && lot.jars >= 0, `A lot refers to product ${lot.product}`);
  sc.products.forEach((p, i) => {
    const jars = sc.lots.reduce((sum, lot) => sum + (lot.product === i ? lot.jars : 0), 0);
    need(jars < 32_768, `${p.id}: ${jars} jars are more than can be followed (32,767)`);
  });
  for (const e of sc.events) {
    need(within(e.product, sc.products.length), `${e.id}: there is no product ${e.product}`);
    need(
      e.mean >= 0 && (e.fixed === true || e.mean <= 60),
      `${e.id}: a market day of ${e.mean} jars is above 60; enter it as a fixed number`,
    );
  }
  for (const b of sc.planned) need(within(b.product, sc.products.length), `${b.id}: there is no product ${b.product}`);
  for (const i of sc.intentions)
    need(within(i.product, sc.products.length), `An intention refers to product ${i.product}`);
}

function checkProduct(p: Scenario['products'][number], sc: Scenario): void {
  need(within(p.store, sc.stores.length), `${p.id}: there is no store ${p.store}`);
  need(within(p.container, sc.containers.length), `${p.id}: there is no container ${p.container}`);
  need(within(p.crop, sc.crops.length, true), `${p.id}: there is no crop ${p.crop}`);
  need(within(p.openStore, sc.stores.length, true), `${p.id}: there is no store ${p.openStore} for opened jars`);
  need(p.perColumn >= 1, `${p.id}: a jar does not fit under its shelf`);
  need(p.usePerWeek >= 0 && p.usePerWeek < 40, `${p.id}: ${p.usePerWeek} a week; below 40 can be simulated`);
  need(p.dispersion >= 1, `${p.id}: a dispersion of ${p.dispersion} is below 1`);
  need(p.jarsPerBatch >= 1, `${p.id}: a batch gives no jar`);
  need(
    p.returnLagWeeks >= 1 && p.returnLagWeeks < RING_WEEKS,
    `${p.id}: jars come back after 1 to 15 weeks, not ${p.returnLagWeeks}`,
  );
  need(
    p.openWeeks >= 0 && p.openWeeks < RING_WEEKS,
    `${p.id}: an opened jar stands under 16 weeks, not ${p.openWeeks}`,
  );
  need(
    !p.profile || p.profile.length >= sc.weeks,
    `${p.id}: its use by week covers ${p.profile?.length} of ${sc.weeks} weeks`,
  );
}
