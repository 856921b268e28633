import type { Ingredient } from '#lib/labels/ingredients.ts';
import type { JarLabel, Purpose } from '#lib/labels/jar-label.ts';
import type { RuleCard } from '#lib/labels/rule-card.ts';
import type { PaperId } from '#lib/labels/sheets.ts';
import { mass } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LabelFace } from './label-face.tsx';
import styles from './labels-view.module.css';
import { LinkButton } from './link-button.tsx';
import { Problem } from './problem.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type LabelAsked = {
  lot: string;
  purpose: Purpose;
  paper: PaperId;
  count: number;
  used: number;
  right: number;
  down: number;
};
export type LabelsOfLotProps = {
  view: {
    lot: string;
    line: string;
    pieces: readonly string[];
    label: JarLabel | null;
    blanks: readonly string[];
    against: readonly string[];
    ingredients: readonly Ingredient[] | null;
    doubts: readonly string[];
  };
  asked: LabelAsked;
  address: string;
  printHref: string;
  noteIngredient: FormAction;
  noted: readonly string[];
  id: string;
};

const PURPOSES: readonly { value: Purpose; label: string }[] = [
  { value: 'home', label: 'Our own shelf: the small label' },
  { value: 'gift', label: 'A gift: tag with the ingredients' },
  { value: 'sale', label: 'For sale: every field the rule card asks for' },
];
const PAPERS = [
  { value: 'a4', label: 'A4 sheet' },
  { value: 'letter', label: 'US Letter sheet' },
  { value: 'single', label: 'Single labels' },
];

/** The label of one lot: how it will look, what stands against it, and how many to print. */
export function LabelsOfLot({ view, asked, address, printHref, noteIngredient, noted, id }: LabelsOfLotProps) {
  return (
    <TrayTable columns="equal">
      <Tray title="The label">
        {view.label ? (
          <div className={styles.preview}>
            <LabelFace label={view.label} jar={view.pieces[0] ?? view.lot} address={address} />
          </div>
        ) : (
          <NotForSale view={view} />
        )}
        <form action="/labels" className={styles.form}>
          <input type="hidden" name="lot" value={view.lot} />
          <Field as="select" name="purpose" label="For" defaultValue={asked.purpose} options={PURPOSES} />
          <Field as="select" name="paper" label="Paper" defaultValue={asked.paper} options={PAPERS} />
          <Field
            name="count"
            label="How many"
            inputMode="numeric"
            defaultValue={String(asked.count || view.pieces.length)}
          />
          <Field
            name="used"
            label="Labels gone from the first sheet"
            inputMode="numeric"
            defaultValue={String(asked.used)}
          />
          <details>
            <summary>The printer is off?</summary>
            <Field name="right" label="Move right" unit="mm" inputMode="decimal" defaultValue={String(asked.right)} />
            <Field name="down" label="Move down" unit="mm" inputMode="decimal" defaultValue={String(asked.down)} />
          </details>
          <div className={styles.buttons}>
            <Button kind="quiet">Show it so</Button>
            {view.label ? <LinkButton href={printHref}>Open the sheet</LinkButton> : null}
          </div>
        </form>
      </Tray>
      <Tray title="What went in">
        <DataTable
          caption="Ingredients, the heaviest first"
          hideCaption
          none="No record says what went into this lot, so no ingredient list can be printed."
          columns={[
            { key: 'what', label: 'Ingredient' },
            { key: 'allergens', label: 'Allergen' },
            { key: 'grams', label: 'Weight in', numeric: true },
          ]}
          rows={(view.ingredients ?? []).map((i) => ({
            id: i.name,
            cells: {
              what: i.name,
              allergens: i.allergens.length > 0 ? <b>{i.allergens.join(', ')}</b> : 'none listed',
              grams: i.grams === null ? 'not weighed' : mass(i.grams),
            },
          }))}
        />
        {view.doubts.length > 0 ? <Caution title={`${view.doubts.join('; ')}.`} /> : null}
        <form action={noteIngredient} className={styles.form}>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="lot" value={view.lot} />
          <Field
            as="select"
            name="what"
            label="Something else went in"
            hint="Butter against the foam, nuts, a sulphite dip"
            options={noted.map((n) => ({ value: n, label: n }))}
          />
          <Button kind="quiet">Put it on the label</Button>
        </form>
      </Tray>
    </TrayTable>
  );
}

function NotForSale({ view }: { view: LabelsOfLotProps['view'] }) {
  return (
    <Problem title="No sale label">
      {[
        view.against.length > 0 ? `Not for sale: ${view.against.join('; ')}.` : '',
        view.blanks.length > 0 ? `Blank on the label: ${view.blanks.join('; ')}.` : '',
      ]
        .filter((t) => t !== '')
        .join(' ')}
    </Problem>
  );
}

export type LabelListProps = {
  lots: readonly { code: string; label: string; madeOn: string; onHand: number; unit: string }[];
  card: RuleCard;
  keepRuleCard: FormAction;
  id: string;
};

/** Lots on hand to be labelled, and the maker's lines of the rule card. */
export function LabelList({ lots, card, keepRuleCard, id }: LabelListProps) {
  const ticks = [
    { name: 'askContact', text: 'Contact must be on the label', on: card.asks.includes('contact') },
    { name: 'askPermit', text: 'Permit number must be on the label', on: card.asks.includes('permit') },
    {
      name: 'askHomeKitchen',
      text: 'Home-kitchen sentence must be on the label',
      on: card.asks.includes('homeKitchen'),
    },
  ];
  return (
    <>
      <Tray title="Which lot?">
        <DataTable
          caption="Lots on hand, the newest first"
          hideCaption
          none="No jar is on hand yet."
          columns={[
            { key: 'lot', label: 'Lot' },
            { key: 'what', label: 'What' },
            { key: 'left', label: 'On hand', numeric: true },
          ]}
          rows={lots.map((l) => ({
            id: l.code,
            cells: {
              lot: <a href={`/labels?lot=${encodeURIComponent(l.code)}`}>{l.code}</a>,
              what: l.label,
              left: l.onHand,
            },
          }))}
        />
      </Tray>
      <Tray title="Rule card of the place of sale">
        <p className={styles.hint}>
          Rules differ from place to place. Ask the office that licenses the sale, write down what it asks for, and
          when.
        </p>
        <form action={keepRuleCard} className={styles.form}>
          <input type="hidden" name="id" value={id} />
          <Field name="maker" label="Maker" defaultValue={card.maker} maxLength={120} />
          <Field name="address" label="Maker’s address" defaultValue={card.address} maxLength={120} />
          <Field name="contact" label="Contact" defaultValue={card.contact} maxLength={120} />
          <Field name="permit" label="Permit or registration number" defaultValue={card.permit} maxLength={120} />
          <Field
            name="homeKitchen"
            label="Home-kitchen sentence"
            hint="In the wording your office gives"
            defaultValue={card.homeKitchen}
            maxLength={120}
          />
          <Field
            name="juice"
            label="What is asked of juice"
            hint="The warning to be printed, or the treatment. Until it is answered no juice is sold"
            defaultValue={card.juice}
            maxLength={120}
          />
          <Field name="checkedWith" label="Checked with" defaultValue={card.checkedWith} maxLength={120} />
          <Field name="checkedOn" type="date" label="Checked on" defaultValue={card.checkedOn} />
          {ticks.map((t) => (
            <label key={t.name} className={styles.tick}>
              <input type="checkbox" name={t.name} defaultChecked={t.on} /> {t.text}
            </label>
          ))}
          <Button kind="quiet">Keep the card</Button>
        </form>
      </Tray>
    </>
  );
}
