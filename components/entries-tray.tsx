import { DataTable } from './data-table.tsx';
import { Tray } from './tray.tsx';

export type EntriesTrayProps = {
  view: {
    rows: readonly {
      id: string;
      when: string;
      what: string;
      by: string | null;
      putRight: string | null;
      mayBeWrong: boolean;
    }[];
    earlier: number;
  };
};

/** The entries that made a lot what it is; each can be put right. */
export function EntriesTray({ view }: EntriesTrayProps) {
  return (
    <Tray title="What was entered" id="entries">
      <DataTable
        caption="Entries behind it, the newest first"
        hideCaption
        columns={[
          { key: 'when', label: 'When' },
          { key: 'what', label: 'What' },
          { key: 'act', label: 'Wrong?' },
        ]}
        rows={view.rows.map((r) => ({
          id: r.id,
          cells: {
            when: r.when,
            what: r.by ? `${r.what} (${r.by})` : r.what,
            act: r.mayBeWrong ? (
              <a href={`/put-right/${encodeURIComponent(r.id)}`} aria-label={`Put right: ${r.what}, ${r.when}`}>
                Put it right
              </a>
            ) : r.putRight === null ? null : (
              `taken back${r.putRight ? `: ${r.putRight}` : ''}`
            ),
          },
        }))}
      />
      {view.earlier > 0 ? <p className="quiet">{view.earlier} earlier entries are not listed.</p> : null}
    </Tray>
  );
}
