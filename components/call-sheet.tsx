import { counted } from '#lib/units/format.ts';

type Stand = { where: string; jars: readonly string[] };
export type CallSheetProps = {
  view: {
    lot: string;
    line: string;
    madeOn: string;
    reported: readonly { jar: string; sign: string; day: string }[];
    calls: readonly Stand[];
    here: readonly Stand[];
  };
};

/** Whom to tell, what to say, and what to take off the shelf: on paper, with boxes to tick. */
export function CallSheet({ view }: CallSheetProps) {
  return (
    <>
      <h2>What to say</h2>
      <p>
        {view.line}, lot {view.lot}, made {view.madeOn}: {spoiledText(view.reported)}. Do not open it, do not taste it.
        Bring it back or throw the whole jar away, and say which number it was.
      </p>
      <h2>To be told</h2>
      <Stands stands={view.calls} none="No jar of it is with anybody else." />
      <h2>To be taken off the shelf</h2>
      <Stands stands={view.here} none="None of it is left here." />
    </>
  );
}

const spoiledText = (reported: CallSheetProps['view']['reported']): string =>
  reported.length === 0
    ? 'it is being looked at'
    : `${counted(reported.length, 'jar')} of it spoiled (${reported
        .map((r) => `${r.jar}, ${r.sign.toLowerCase()}`)
        .join('; ')})`;

const Stands = ({ stands, none }: { stands: readonly Stand[]; none: string }) =>
  stands.length === 0 ? (
    <p>{none}</p>
  ) : (
    <ul className="boxes">
      {stands.map((s) => (
        <li key={s.where}>
          {counted(s.jars.length, 'jar')} {s.where}: {s.jars.join(', ')}
        </li>
      ))}
    </ul>
  );
