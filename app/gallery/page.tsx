import { AppFrame } from '#components/app-frame.tsx';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { Tray } from '#components/tray.tsx';
import { TrayTable } from '#components/tray-table.tsx';
import { PerishList } from '#components/perish-list.tsx';
import { ShelfPicture } from '#components/shelf-picture.tsx';
import { PlanCard } from '#components/plan-card.tsx';
import { PlanBoard } from '#components/plan-board.tsx';
import { DayMover } from '#components/day-mover.tsx';
import { FanChart } from '#components/fan-chart.tsx';
import { Caution } from '#components/caution.tsx';
import { Refusal } from '#components/refusal.tsx';
import { EmptyState } from '#components/empty-state.tsx';
import { ErrorState } from '#components/error-state.tsx';
import { Button } from '#components/button.tsx';
import { ButtonRow } from '#components/button-row.tsx';
import { Field } from '#components/field.tsx';
import { FigureWithSource } from '#components/figure-with-source.tsx';
import { ProgressLine } from '#components/progress-line.tsx';
import { DataTable } from '#components/data-table.tsx';
import { HarvestCurve } from '#components/harvest-curve.tsx';
import { RunoutStrip } from '#components/runout-strip.tsx';
import { QuantileDots } from '#components/quantile-dots.tsx';
import { CookCurve } from '#components/cook-curve.tsx';
import { SetChart } from '#components/set-chart.tsx';
import { Sankey } from '#components/sankey.tsx';
import { BatchSteps } from '#components/batch-steps.tsx';
import { BigTimer } from '#components/big-timer.tsx';
import { NumberStepper } from '#components/number-stepper.tsx';
import { JarRow } from '#components/jar-row.tsx';
import { ChoiceTiles } from '#components/choice-tiles.tsx';
import { StatusMark } from '#components/status-mark.tsx';
import { fruitColour, colouredFoods, labelColour } from '#components/fruit-colour.ts';
import { addDays } from '#lib/units/plain-date.ts';
import { Pad } from './pad.tsx';
const d = (s: string) => s as any;
const HP = { pitchMm: 75, heightMm: 97 }, PT = { pitchMm: 83, heightMm: 130 }, QT = { pitchMm: 96, heightMm: 178 };
const j = (line: string, food: string, product: string, jarKind: any, count: number, planned = false) => ({ line, label: line, foodColour: fruitColour(food, product), jarKind, count, planned, href: '/pantry' });
const S = { widthMm: 900, depthMm: 320, clearMm: 230 };
const shelves = [
  { address: 'B2-S1', ...S, jars: [j('Damson jam', 'damson', 'jam', HP, 10), j('Early plum jam', 'plum-early', 'jam', HP, 8), j('Seville marmalade', 'orange-seville', 'marmalade', HP, 6), j('Gooseberry jam', 'gooseberry', 'jam', HP, 8), j('Raspberry jam', 'raspberry-red', 'jam', HP, 2), j('Apple butter', 'apple-cooking', 'butter', HP, 14), j('Damson jam planned', 'damson', 'jam', HP, 12, true)] },
  { address: 'B3-S2', ...S, jars: [j('Apple sauce', 'apple-cooking', 'sauce', PT, 9), j('Pears in light syrup', 'pear', 'fruit-in-syrup', PT, 12), j('Apple juice, canned', 'apple-dessert', 'juice', QT, 9), j('Plums in syrup', 'plum-european', 'fruit-in-syrup', QT, 5)] },
  { address: 'B4-S1', ...S, jars: [] },
];
const weeks = Array.from({ length: 52 }, (_, i) => { const m = 250 + 120 * Math.sin((i - 18) / 8) - i; const s = 10 + i * 1.2; return { week: addDays(d('2025-05-05'), i * 7), p10: m - 1.3 * s, p25: m - .7 * s, p50: m, p75: m + .7 * s, p90: m + 1.3 * s }; });
const act = async () => { 'use server'; };
export default async function Page({ searchParams }: any) {
  const part = (await searchParams).part ?? 'all';
  const mover = <DayMover today={d('2025-09-12')} action={act} quickDays={[{ day: d('2025-07-18'), label: 'Soft raspberries at nine in the evening' }, { day: d('2025-09-12'), label: 'Damsons come in' }, { day: d('2026-01-15'), label: 'January: choosing from the shelf' }]} />;
  const show = (p: string) => part === 'all' || part === p;
  return (
    <AppFrame placeName="Wrenlatch" today={d('2025-09-12')} dayMover={mover} current={part === 'pad' ? 'harvest' : 'today'}>
      {show('pad') && <Pad day="2025-09-12" queue={{ waiting: 4, lastSent: '17:42' }} rows={[['D3', 'damson', 'Damson', 12], ['C2', 'plum-prune', 'Prune plum', 9], ['A2', 'apple-dessert', 'Apple (dessert)', 30], ['E2', 'raspberry-red', 'Raspberry', 3], ['F1', 'fig', 'Fig', null], ['B4', 'pear-mid', 'Pear (mid)', 20], ['E5', 'loganberry', 'Tayberry and trailing blackberry', 4]].map(([id, cropId, cropLabel, usualKg]) => ({ id, label: `row ${id}`, cropId, cropLabel, usualKg, usualContainer: 'blue-bucket' }))} containers={[['blue-bucket', 'blue bucket', 620], ['lug', 'lug', 950], ['crate', 'crate', 1400], ['bag', 'picking bag', 1100], ['punnet', 'punnet', 12], ['flat', 'flat of 12 pints', 350]].map(([id, label, tareG]) => ({ id, label, tareG }))} />}
      {show('today') && <>
        <AnswerHeading answer="31 kg of fruit to place before Thursday" sub="Three batches this week keep all but 1.4 kg of it, and use the apple-core powder you dried in October." />
        <TrayTable>
          <Tray title="Turning first" action={<a href="/harvest">All fruit</a>}><PerishList rows={[
            { id: '1', name: 'Damsons, row D3', grade: 'soft', grams: 1040, shareLeft: .12, deadline: 'cook by 08:00 Sat', left: '11 h left', cropId: 'damson', href: '/x', state: 'due' },
            { id: '2', name: 'Raspberries', grade: 'soft', grams: 5200, shareLeft: 0, deadline: 'past its time since 06:00', cropId: 'raspberry-red', href: '/x', state: 'late' },
            { id: '3', name: 'Damsons, row D3', grade: 'blemished', grams: 3700, shareLeft: .62, deadline: 'cook by Mon', left: '3 days left', cropId: 'damson', href: '/x' },
            { id: '4', name: 'Pears, Conference', grade: 'maturing', grams: 22000, shareLeft: 1, deadline: 'ready about 2 October', cropId: 'pear-mid', href: '/x', state: 'waiting' }]} /></Tray>
          <Tray title="Tonight at the stove">
            <FigureWithSource label="Stop at" value="103.0 °C · 217.5 °F" formula="Today's boiling water + 4.44 K (8 °F)" inputs={[{ label: 'boiling water', value: '98.6 °C', from: 'read at 17:50' }]} source="USDA Complete Guide, guide 7, p. 7-6" status="verified" changes="a new reading of boiling water" />
            <FigureWithSource label="Sugar" value="1.20 kg" formula="80 parts to 100 of fruit" source="house recipe" status="common practice" />
            <ProgressLine label="Lids" share={.69} text="148 of 214" /><ProgressLine label="Shelf" share={1.1} text="22 jars too many" />
            <ButtonRow><Button>Start the batch sheet</Button><Button kind="quiet">Not tonight</Button><Button kind="refuse">Throw away</Button></ButtonRow>
          </Tray>
        </TrayTable>
        <TrayTable columns="equal">
          <Tray title="Words"><div style={{ display: 'grid', gap: 12 }}><Caution title="Boiling syrup.">Fill slowly; keep children off the hob.</Caution><Refusal cause="No tested time for quarts of jam." waysOut={['Use pints (10 min here).', 'Freeze it.']} source="USDA Complete Guide, 2015" /><EmptyState title="Nothing has been picked yet." first="Weigh the first bucket in the shed." action={<Button>Weigh a bucket</Button>} /><ErrorState what="The plan could not be worked out." kept="Everything recorded is kept." next="Try again in a minute." action={<Button kind="quiet">Try again</Button>} />
            <div style={{ display: 'flex', gap: 16, flexWrap: 'wrap' }}>{(['sealed', 'hold', 'due', 'late', 'unsealed', 'as-tested', 'not-as-tested', 'unknown', 'doubtful', 'waiting', 'now', 'planned', 'refused'] as const).map((s) => <StatusMark key={s} state={s} />)}</div></div></Tray>
          <Tray title="Forms"><form><Field name="a" label="Fruit after trimming" unit="kg" hint="Weigh it, do not take it from the plan." error="3.20 kg is 0.20 kg more than the lot holds." defaultValue="3,20" required /><Field as="select" name="b" label="Pan" options={[{ value: '1', label: '10 L pan' }]} /><ChoiceTiles name="c" legend="Seeds out?" options={[{ value: 'y', label: 'Yes' }, { value: 'n', label: 'No', hint: 'keep for stock only' }]} /><NumberStepper name="n" label="Jars filled" defaultValue={6} unit="jars" /><ButtonRow><Button size="large">Record</Button></ButtonRow></form></Tray>
        </TrayTable></>}
      {show('pantry') && <>
        <AnswerHeading answer="128 jars, and room for 74 more" sub="Drawn to scale. Dashed jars are planned." />
        <Tray title="Bay 2"><ShelfPicture shelves={shelves} /></Tray><br />
        <Tray title="The whole store"><ShelfPicture columns={4} shelves={[...shelves, ...shelves.map((s) => ({ ...s, address: s.address + 'x' }))]} /></Tray><br />
        <Tray title="Lots"><JarRow lot="25256-DAM-A" label="Damson jam" foodId="damson" product="jam" count={10} size="half-pint" made="made 13 Sep 2025" bestBefore="best before Mar 2027" address="B2-S1" state="sealed" href="/x" takeOne={act} giveHref="/g" sellHref="/s" /><JarRow lot="25256-DAM-B" label="Apple juice, canned" foodId="apple-dessert" product="juice" count={2} size="quart" made="made 13 Sep 2025" bestBefore="best before Mar 2027" address="B2-S1" state="hold" href="/x" takeOne={act} /></Tray></>}
      {show('plan') && <>
        <AnswerHeading answer="Three plans keep 9 to 12 kg tonight" />
        <TrayTable columns="three">{[0, 1, 2].map((i) => <PlanCard key={i} title={['Damson jam twice, freeze the rest', 'One jam, one paste', 'Freeze everything'][i]!} gramsKept={12340 - i * 2000} gramsLost={i * 900} jars={[{ label: 'half-pints', count: 12 }, { label: 'pints', count: 4 }]} lidsLeft={2} minutes={205} bindingLimit={i === 2 ? null : 'lids'} gap={i === 0 ? .021 : i === 1 ? 0 : null} chosen={i === 0} batches={['19:00 Damson jam A, 10 L pan', '20:10 Damson jam B, 10 L pan']} action={<Button kind={i ? 'quiet' : 'primary'}>Take this plan</Button>} />)}</TrayTable><br />
        <Tray title="When"><PlanBoard days={[d('2025-09-12'), d('2025-09-13')]} tracks={[{ id: 'h1', label: 'hob 1', kind: 'burner' }, { id: 'h2', label: 'hob 2', kind: 'burner' }, { id: 'p10', label: '10 L pan', kind: 'pan' }, { id: 'c22', label: 'big canner', kind: 'canner' }, { id: 'odda', label: 'Odda', kind: 'person' }]} blocks={[{ id: '1', day: d('2025-09-12'), trackIds: ['h1', 'p10', 'odda'], start: 1140, finish: 1205, label: 'Damson jam A', foodId: 'damson', href: '/x' }, { id: '2', day: d('2025-09-12'), trackIds: ['h1', 'p10', 'odda'], start: 1210, finish: 1275, label: 'Damson jam B', foodId: 'damson' }, { id: '3', day: d('2025-09-12'), trackIds: ['h2', 'c22'], start: 1200, finish: 1470, label: 'Canner load 1', foodId: 'pear', product: 'sauce' }]} /></Tray><br />
        <TrayTable columns="equal"><Tray title="Batch"><BatchSteps steps={[{ id: '1', title: 'Weigh the fruit', state: 'done', at: '18:42' }, { id: '2', title: 'Boil to 2.14 kg', state: 'now', body: 'Sugar 1.20 kg, water 0.15 kg.', action: <Button size="large">Stopped</Button> }, { id: '3', title: 'Fill 6 half-pints', state: 'next', body: 'Headspace ¼ in.' }]} /></Tray>
          <Tray title="Timer"><BigTimer label="Process" endsAt={Date.now() + 600000} note="10 min from the table" /><br /><BigTimer label="Rest" endsAt={Date.now() - 100000} /></Tray></TrayTable></>}
      {show('season') && <>
        <AnswerHeading answer="The shelf fills up in about 3 years out of 10" sub="Most often in late October." />
        <Tray title="Space"><FanChart title="Shelf space" sentence="It fills up before next harvest in about 3 years out of 10." unit="cm" weeks={weeks} samples={[0, 1, 2].map((n) => weeks.map((w, i) => w.p50 + Math.sin(i / (3 + n)) * 25 * (n - 1) + n * 8))} capacity={{ value: 390, label: 'shelf is full: 390 cm' }} /></Tray><br />
        <Tray title="What runs out"><RunoutStrip caption="Darker: more years have none left." weeks={weeks.map((w) => w.week)} rows={[['Strawberry jam', 20], ['Damson jam', 34], ['Pears in light syrup', 45], ['Frozen raspberries 500 g', 60]].map(([l, at]: any) => ({ id: l, label: l, href: '/x', gone: weeks.map((_, i) => Math.min(1, Math.max(0, (i - at + 8) / 16))), bestBy: [40], words: '7 in 10 gone by May' }))} /></Tray><br />
        <TrayTable columns="equal">
          <Tray title="Damsons"><HarvestCurve cropId="damson" cropLabel="Damson" sentence="Damsons: 17 kg picked, about half. Another 18 kg or so; 8 times in 10 between 10 and 26." picked={[['2025-09-01', 0], ['2025-09-05', 6], ['2025-09-12', 17]].map(([x, kg]: any) => ({ day: x, kg }))} coming={[0, 7, 14, 21].map((n) => ({ day: addDays(d('2025-09-12'), n), p10: 17 + n * .5, p25: 17 + n * .65, p50: 17 + n * .86, p75: 17 + n * 1.05, p90: 17 + n * 1.24 }))} /></Tray>
          <Tray title="Strawberry jam"><QuantileDots sentence="Half the time it is gone by mid-March." from={d('2025-09-12')} to={d('2026-06-10')} colour={fruitColour('strawberry')} days={[120, 135, 150, 160, 165, 170, 175, 180, 182, 185, 190, 200, 210, 220].map((n) => addDays(d('2025-09-12'), n)).concat(Array(6).fill(null)) as any} /></Tray>
          <Tray title="Boil"><CookCurve sentence="Stop at 2.14 kg, about 13 minutes of boil." stopKg={2.143} colour={fruitColour('damson')} expected={[{ minute: 0, kg: 2.73 }, { minute: 13, kg: 2.143 }]} readings={[{ minute: 0, kg: 2.73 }, { minute: 6, kg: 2.5 }]} /></Tray>
          <Tray title="Set"><SetChart zone={{ solids: [60, 68], ph: [2.8, 3.3] }} point={{ solids: 58, ph: 3.5, label: 'this batch' }} sentence="A little sharper and boiled to 65 °Bx it reaches the firm zone." source="example" /></Tray>
        </TrayTable><br />
        <Tray title="Where it went"><Sankey title="Mass from tree to jar" nodes={[{ id: 'd', label: 'Damson', column: 0, colour: fruitColour('damson') }, { id: 'r', label: 'Raspberry', column: 0, colour: fruitColour('raspberry-red') }, { id: 'b', label: 'Batches', column: 1, colour: '#7a8194' }, { id: 'f', label: 'Freezer', column: 1, colour: '#7a8194' }, { id: 'j', label: 'Jars', column: 2, colour: '#1c3a86' }, { id: 'v', label: 'Vapour', column: 2, colour: '#7a8194' }, { id: 'c', label: 'Compost', column: 2, colour: '#7a8194' }]} links={[{ from: 'd', to: 'b', grams: 13740, colour: fruitColour('damson') }, { from: 'r', to: 'b', grams: 1400, colour: fruitColour('raspberry-red') }, { from: 'r', to: 'f', grams: 3800, colour: fruitColour('raspberry-red') }, { from: 'b', to: 'j', grams: 11000 }, { from: 'b', to: 'v', grams: 3300 }, { from: 'b', to: 'c', grams: 400 }]} /></Tray><br />
        <Tray title="Table"><DataTable caption="To order" columns={[{ key: 'a', label: 'What' }, { key: 'b', label: 'Enough half the time', numeric: true }, { key: 'c', label: '9 in 10', numeric: true }]} rows={[{ id: '1', cells: { a: 'Lids', b: 40, c: 60 } }, { id: '2', cells: { a: 'Sugar', b: '12 kg', c: '18 kg' } }]} /></Tray><br />
        <Tray title="Fruit"><div style={{ display: 'flex', flexWrap: 'wrap', gap: 4 }}>{colouredFoods().map((f) => <span key={f} style={{ background: fruitColour(f), color: labelColour(fruitColour(f)), padding: '4px 8px', fontSize: 13 }}>{f}</span>)}</div></Tray></>}
    </AppFrame>
  );
}
