import { fahrenheit } from '#lib/units/convert.ts';
import { bothMasses } from '#lib/units/format.ts';
import { celsius } from '#lib/units/quantity.ts';
import styles from './batch-card.module.css';
import { BatchNow } from './batch-now.tsx';
import { PhReadings } from './batch-ph.tsx';
import { BatchSet } from './batch-set.tsx';
import type { BatchCardProps, BatchSheetShown } from './batch-shown.ts';
import { DataTable } from './data-table.tsx';
import { SetReport } from './set-report.tsx';
import { ShownFigure } from './shown-figure.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

/** One batch: what to do now, its figures, its jars and its log. */
export function BatchCardView(props: BatchCardProps) {
  const { view } = props;
  return (
    <>
      <BatchNow {...props} />
      {view.set ? (
        <SetReport code={view.code} said={view.set.said} action={props.actions.set} id={props.ids[5] as string} />
      ) : null}
      <BatchSet {...props} />
      <TrayTable columns="equal">
        {view.sheet ? <SheetTray sheet={view.sheet} /> : null}
        <Tray title="Jars and log">
          {view.jars.length > 0 ? (
            <DataTable
              caption="Jars of this batch"
              hideCaption
              columns={[
                { key: 'lot', label: 'Lot' },
                { key: 'left', label: 'Left', numeric: true },
                { key: 'state', label: 'Process, seal' },
                { key: 'where', label: 'Where' },
              ]}
              rows={view.jars.map((j) => ({
                id: j.code,
                cells: {
                  lot: <a href={`/trace/${j.code}`}>{j.code}</a>,
                  left: j.onHand,
                  state:
                    [j.process, j.seal, j.hold ? `on hold: ${j.hold}` : null].filter(Boolean).join(', ') ||
                    'none asked',
                  where: j.address ?? 'not shelved',
                },
              }))}
            />
          ) : null}
          {[...new Set(view.jars.flatMap((j) => j.flags))].map((f) => (
            <p key={f}>Note: {f}.</p>
          ))}
          {view.partial && view.partial.grams > 0 ? (
            <p>
              Partial jar in the fridge: {bothMasses(view.partial.grams)}, use by {view.partial.useBy}.
            </p>
          ) : null}
          {view.ph.readings.length > 0 ? <PhReadings readings={view.ph.readings} /> : null}
          <ol className={styles.log}>
            {view.log.map((l, i) => (
              <li key={`${l.at}-${i}`}>
                <time dateTime={l.at}>{l.time}</time> {l.what}
              </li>
            ))}
          </ol>
          {view.inputs.length > 0 ? (
            <p className={styles.quiet}>
              From{' '}
              {view.inputs.map((x, i) => (
                <span key={x.code}>
                  {i > 0 ? ', ' : ''}
                  <a href={`/trace/${x.code}`}>{x.code}</a>
                </span>
              ))}
            </p>
          ) : null}
        </Tray>
      </TrayTable>
    </>
  );
}

function SheetTray({ sheet: s }: { sheet: BatchSheetShown }) {
  if (s.figures.length > 0)
    return (
      <Tray title="The sheet">
        <dl className={styles.facts}>
          <div>
            <dt>Fruit as weighed</dt>
            <dd>{bothMasses(s.rawG)}</dd>
          </div>
        </dl>
        {s.figures.map((f) => (
          <ShownFigure key={f.label} {...f} />
        ))}
      </Tray>
    );
  const rows: [string, string][] = [
    ...(s.rawG ? [['Fruit as weighed', bothMasses(s.rawG)] as [string, string]] : []),
    ...(s.preparedG ? [['Prepared', bothMasses(s.preparedG)] as [string, string]] : []),
    ...s.doses.map((d): [string, string] => [d.name, bothMasses(d.grams)]),
    ['Mix', bothMasses(s.mixG)],
    ...(s.finalG ? [['Pan weight to stop at', bothMasses(s.finalG)] as [string, string]] : []),
    ...(s.boilOffG ? [['To boil off', bothMasses(s.boilOffG)] as [string, string]] : []),
    ...(s.boilMin ? [['Minutes at a full boil', `about ${s.boilMin}`] as [string, string]] : []),
    ...(s.stopC
      ? [
          ['Temperature, a guide', `${s.stopC.toFixed(1)} °C · ${fahrenheit(celsius(s.stopC)).toFixed(1)} °F`] as [
            string,
            string,
          ],
        ]
      : []),
    ...(s.jars
      ? [
          ['Jars', `${s.jars} ${s.jarLabel ?? 'packs'}${s.partialG > 0 ? ` and ${s.partialG} g` : ''}`] as [
            string,
            string,
          ],
        ]
      : []),
    ...(s.processMin ? [['Process', `${s.processMin} min at a full boil`] as [string, string]] : []),
    ...(s.headspaceIn
      ? [
          [
            'Headspace',
            `${s.headspaceIn === 0.25 ? '¼' : s.headspaceIn === 0.5 ? '½' : s.headspaceIn} in · ${s.headspaceMm} mm`,
          ] as [string, string],
        ]
      : []),
  ];
  return (
    <Tray title="The sheet">
      <dl className={styles.facts}>
        {rows.map(([what, value]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </Tray>
  );
}
