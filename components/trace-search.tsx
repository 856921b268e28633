import { Button } from './button.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import { Tray } from './tray.tsx';

export type TraceSearchProps = { typed: string; found: readonly { code: string; label: string; madeOn: string }[] };

/** Finds a lot by its code or name. */
export function TraceSearch({ typed, found }: TraceSearchProps) {
  return (
    <Tray title="Find it">
      <form action="/trace">
        <Field
          name="code"
          label="Code or name"
          hint="25256-DAM-A, a jar’s 25256-DAM-A/01, a receipt’s R-25180-SUG-1, or damson"
          defaultValue={typed}
          required
          size="large"
        />
        <Button>Look it up</Button>
      </form>
      {typed ? (
        <DataTable
          caption="Lots found"
          hideCaption
          none="No lot bears that. The code is on the label; a word of the name will do."
          columns={[
            { key: 'code', label: 'Lot' },
            { key: 'what', label: 'What' },
            { key: 'made', label: 'Made' },
          ]}
          rows={found.map((f) => ({
            id: f.code,
            cells: { code: <a href={`/trace/${f.code}`}>{f.code}</a>, what: f.label, made: f.madeOn },
          }))}
        />
      ) : null}
    </Tray>
  );
}
