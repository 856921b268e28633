import { bothTemperatures, counted, mass } from '#lib/units/format.ts';
import { monthName, plainDate } from '#lib/units/plain-date.ts';
import { celsius } from '#lib/units/quantity.ts';
import { Button } from './button.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import styles from './place-trays.module.css';
import { Problem } from './problem.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

type Kitchen = {
  id: string;
  code: string;
  label: string;
  altitudeM: number;
  burners: readonly { code: string; watts: number; outdoors: boolean }[];
  pans: readonly { code: string; label: string; evapGPerMin: number | null }[];
  canners: readonly { code: string; label: string; loads: Readonly<Record<string, number>> }[];
  dryers: readonly { code: string; trays: number; centiC: number }[];
};
export type PlaceTraysProps = {
  view: {
    place: {
      kitchens: readonly Kitchen[];
      rooms: readonly {
        id: string;
        code: string;
        label: string;
        kind: string;
        bays: number | null;
        shelvesPerBay: number | null;
        litres: number | null;
        crates: number | null;
        lowC: number | null;
        highC: number | null;
      }[];
      crops: readonly {
        id: string;
        label: string;
        count: number;
        unit: string;
        gPerUnit: number;
        windowFrom: string;
        windowTo: string;
        plantings: readonly { row: string }[];
      }[];
      containers: readonly { code: string; label: string; tareG: number }[];
      jarKinds: readonly { code: string; label: string; fillMl: number; canning: boolean }[];
      people: readonly { code: string; label: string; role: string; minutes: readonly number[] }[];
    };
    foods: readonly { id: string; name: string }[];
    supplies: readonly { item: string; label: string; qty: number; unit: string }[];
    water: readonly { kitchenId: string; centiC: number }[];
  };
  items: readonly { item: string; label: string }[];
  actions: { addCrop: FormAction; bringIn: FormAction; noteWater: FormAction };
  ids: readonly string[];
  id: string;
  /** What was typed into a form that was refused, by field. */
  typed: Readonly<Record<string, string | undefined>>;
  said: string | null;
  refused: string | null;
};

/** Kitchens with today's boiling water, what is on hand, stores, jars, people, crops and rows; each opens to its figures. */
export function PlaceTrays({ view, items, actions, ids, id, typed, said, refused }: PlaceTraysProps) {
  const { place } = view;
  return (
    <>
      {refused ? <Problem title="Not changed">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <TrayTable columns="equal">
        {place.kitchens.map((k, i) => (
          <Tray key={k.id} title={k.label}>
            <KitchenFacts
              kitchen={k}
              jarName={(code) => place.jarKinds.find((j) => j.code === code)?.label ?? code}
              centiC={view.water.filter((w) => w.kitchenId === k.id).at(-1)?.centiC ?? null}
            />
            <form action={actions.noteWater} className={styles.line}>
              <input type="hidden" name="id" value={ids[i]} />
              <input type="hidden" name="kitchenId" value={k.id} />
              <Field
                name="centiC"
                defaultValue={typed.centiC}
                label="Water boils today at"
                unit="°C"
                inputMode="decimal"
                required
              />
              <Button kind="quiet">Note it</Button>
            </form>
          </Tray>
        ))}
        <Tray title="On hand">
          <DataTable
            caption="Supplies on hand"
            hideCaption
            none="Nothing has come in yet: jars, lids and sugar first."
            columns={[
              { key: 'what', label: 'What' },
              { key: 'qty', label: 'On hand', numeric: true },
            ]}
            rows={view.supplies.map((s) => ({ id: s.item, cells: { what: s.label, qty: amount(s.qty, s.unit) } }))}
          />
          <form action={actions.bringIn} className={styles.below}>
            <input type="hidden" name="id" value={id} />
            <Field
              as="select"
              name="item"
              defaultValue={typed.item}
              label="Something came in"
              required
              options={items.map((s) => ({ value: s.item, label: s.label }))}
            />
            <Field
              name="qty"
              defaultValue={typed.qty}
              label="How much"
              hint="In the unit named beside it"
              inputMode="decimal"
              required
            />
            <Field name="supplier" defaultValue={typed.supplier} label="From whom" maxLength={80} />
            <Button kind="quiet">Bring it in</Button>
          </form>
        </Tray>
        <Tray title="Jars and containers">
          <Fittings
            rows={[
              ...place.jarKinds.map((j) => ({
                href: `/place/jar/${j.code}`,
                what: j.label,
                figures: [`${j.fillMl} mL`, j.canning ? null : 'not for canning'],
              })),
              ...place.containers.map((c) => ({
                href: `/place/container/${c.code}`,
                what: c.label,
                figures: [`weighs ${(c.tareG / 1000).toFixed(3)} kg`],
              })),
            ]}
            add={[
              ['a jar', '/place/jar/new'],
              ['a container', '/place/container/new'],
            ]}
          />
        </Tray>
        <Tray title="Stores">
          <Fittings
            rows={place.rooms.map((r) => ({
              href: `/place/store/${r.code}`,
              what: r.label,
              figures: [roomOf(r), r.lowC === null ? null : `${r.lowC} to ${r.highC} °C`],
            }))}
            add={[
              ['shelves', '/place/store/new?as=shelf'],
              ['a cool place', '/place/store/new?as=ambient'],
              ['a fridge', '/place/store/new?as=fridge'],
              ['a freezer', '/place/store/new?as=freezer'],
              ['a dry cupboard', '/place/store/new?as=dry'],
            ]}
          />
        </Tray>
        <Tray title="People">
          <Fittings
            rows={place.people.map((p) => ({
              href: `/place/person/${p.code}`,
              what: p.label,
              figures: [p.role, kitchenHours(p.minutes)],
            }))}
            add={[['a person', '/place/person/new']]}
          />
        </Tray>
      </TrayTable>
      <p className={styles.add}>
        <a href="/place/kitchen/new">Add a kitchen</a>
        <a href="/place/house/habits">How this house works</a>
        <a href="/place/house/prices">What bought goods cost</a>
      </p>
      <Tray title="Crops and rows">
        <DataTable
          caption="Crops"
          hideCaption
          none="No crop is on record yet."
          columns={[
            { key: 'what', label: 'Crop' },
            { key: 'rows', label: 'Rows' },
            { key: 'plants', label: 'Plants', numeric: true },
            { key: 'kg', label: 'kg in an ordinary year', numeric: true },
            { key: 'window', label: 'Picked' },
          ]}
          rows={place.crops.map((c) => ({
            id: c.id,
            cells: {
              what: c.label,
              rows: [...new Set(c.plantings.map((p) => p.row))].map((row, i) => (
                <span key={row}>
                  {i > 0 ? ', ' : null}
                  <a href={`/place/row/${encodeURIComponent(row)}`}>{row}</a>
                </span>
              )),
              plants: plants(c.count, c.unit),
              kg: Math.round((c.count * c.gPerUnit) / 1000),
              window: `${monthDay(c.windowFrom)} to ${monthDay(c.windowTo)}`,
            },
          }))}
        />
        <details className={styles.more} open={typed.kgPerUnit !== undefined}>
          <summary>Add a crop</summary>
          <form action={actions.addCrop}>
            <Field
              as="select"
              name="foodId"
              defaultValue={typed.foodId}
              label="Fruit"
              required
              options={view.foods.map((f) => ({ value: f.id, label: f.name }))}
            />
            <Field name="label" defaultValue={typed.label} label="What you call it" required maxLength={60} />
            <Field
              name="row"
              defaultValue={typed.row}
              label="Row"
              hint="As on the stake: A3, E1"
              required
              maxLength={12}
            />
            <Field name="count" defaultValue={typed.count} label="How many" inputMode="numeric" required />
            <Field
              as="select"
              name="unit"
              defaultValue={typed.unit}
              label="of"
              required
              options={['tree', 'bush', 'plant', 'crown', 'metre of row'].map((u) => ({ value: u, label: u }))}
            />
            <Field
              name="kgPerUnit"
              defaultValue={typed.kgPerUnit}
              label="Kilograms of each in an ordinary year"
              inputMode="decimal"
              required
            />
            <Field
              name="windowFrom"
              defaultValue={typed.windowFrom}
              type="date"
              label="First picking day, last year or this"
              required
            />
            <Field name="windowTo" defaultValue={typed.windowTo} type="date" label="Last picking day" required />
            <Button kind="quiet">Add the crop</Button>
          </form>
        </details>
      </Tray>
    </>
  );
}

const MANY: Readonly<Record<string, string>> = { bush: 'bushes', 'metre of row': 'm of row' };
const plants = (n: number, unit: string): string => counted(n, unit, MANY[unit]);

function amount(qty: number, unit: string): string {
  if (unit === 'g') return mass(qty);
  return unit === 'ml' ? `${qty.toLocaleString('en-GB')} mL` : counted(qty, unit);
}

/** "15 Apr" of "04-15"; crops carry no year. */
const monthDay = (md: string): string => `${Number(md.slice(3))} ${monthName(plainDate(`2001-${md}`)).slice(0, 3)}`;

type Room = PlaceTraysProps['view']['place']['rooms'][number];
const roomOf = (r: Room): string =>
  r.bays
    ? `${r.bays} bays of ${r.shelvesPerBay} shelves`
    : r.litres
      ? `${r.litres} L`
      : r.crates
        ? `${r.crates} crates`
        : 'size not given';

const kitchenHours = (minutes: readonly number[]): string | null => {
  const all = minutes.reduce((n, m) => n + m, 0);
  return all > 0 ? `${Number((all / 60).toFixed(1))} kitchen hours a week` : null;
};

type FittingsProps = {
  rows: readonly { href: string; what: string; figures: readonly (string | null)[] }[];
  add: readonly (readonly [what: string, href: string])[];
};

/** Things a place is fitted with, each opening to its own form. */
const Fittings = ({ rows, add }: FittingsProps) => (
  <>
    <ul className={styles.fittings}>
      {rows.map((r) => (
        <li key={r.href}>
          <a href={r.href}>{r.what}</a>
          <span>{r.figures.filter((f) => f !== null).join(' · ')}</span>
        </li>
      ))}
    </ul>
    <p className={styles.add}>
      Add{' '}
      {add.map(([what, href]) => (
        <a key={href} href={href}>
          {what}
        </a>
      ))}
    </p>
  </>
);

function KitchenFacts({
  kitchen: k,
  jarName,
  centiC,
}: {
  kitchen: Kitchen;
  jarName: (code: string) => string;
  centiC: number | null;
}) {
  const at = (kind: string, code: string) => `/place/${kind}/${code}?kitchen=${k.code}`;
  return (
    <>
      <p>
        <a href={`/place/kitchen/${k.code}`}>
          {k.altitudeM} m above the sea ({Math.round(k.altitudeM / 0.3048).toLocaleString('en-GB')} ft)
        </a>
        .{' '}
        {centiC === null
          ? 'Today’s boiling water is not noted: the altitude stands in.'
          : `Water boils at ${bothTemperatures(celsius(centiC / 100))} today.`}
      </p>
      <Fittings
        rows={[
          ...k.pans.map((p) => ({
            href: at('pan', p.code),
            what: p.label,
            figures: [p.evapGPerMin ? `boils off ${p.evapGPerMin} g/min` : null],
          })),
          ...k.canners.map((c) => ({
            href: at('canner', c.code),
            what: c.label,
            figures: [
              Object.entries(c.loads)
                .map(([j, n]) => `${n} ${jarName(j)}`)
                .join(', '),
            ],
          })),
          ...k.burners.map((b) => ({
            href: at('burner', b.code),
            what: `${(b.watts / 1000).toFixed(1)} kW burner`,
            figures: [b.outdoors ? 'outdoors' : null],
          })),
          ...k.dryers.map((d) => ({
            href: at('dryer', d.code),
            what: `Dryer of ${counted(d.trays, 'tray')}`,
            figures: [`${d.centiC / 100} °C`],
          })),
        ]}
        add={[
          ['a pan', at('pan', 'new')],
          ['a canner', at('canner', 'new')],
          ['a burner', at('burner', 'new')],
          ['a dryer', at('dryer', 'new')],
        ]}
      />
    </>
  );
}
