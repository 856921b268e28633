import { DataTable } from './data-table.tsx';

export type NeighbourSheetProps = {
  view: {
    items: readonly { slug: string; line: string; packs: string; mass: string }[];
    done: readonly { id: string; what: string; mass: string; how: string }[];
  };
};

/** On paper for whoever takes some of it in: what there is, what came, and that it stays frozen. */
export function NeighbourSheet({ view }: NeighbourSheetProps) {
  const moved = view.done.filter((d) => d.how.startsWith('moved'));
  return (
    <>
      <h2>What there is</h2>
      <DataTable
        caption="Things that look for a freezer"
        hideCaption
        none="Nothing is left that looks for a freezer."
        columns={[
          { key: 'what', label: 'What' },
          { key: 'packs', label: 'Packs' },
          { key: 'mass', label: 'Weight', numeric: true },
          { key: 'came', label: 'Taken in' },
        ]}
        rows={view.items.map((i) => ({
          id: i.slug,
          cells: { what: i.line, packs: i.packs, mass: i.mass, came: '________' },
        }))}
      />
      {moved.length > 0 ? (
        <>
          <h2>Taken in already</h2>
          <ul className="boxes">
            {moved.map((d) => (
              <li key={d.id}>
                {d.what}: {d.mass}, {d.how}
              </li>
            ))}
          </ul>
        </>
      ) : null}
      <p>
        Keep it at −18 °C (0 °F). A pack that has gone soft: set it apart and tell us. It is ours again when our freezer
        runs; a pack or two is yours for the room.
      </p>
      <p>Your name and telephone: ______________________________</p>
    </>
  );
}
