import styles from './batch-out.module.css';
import type { BatchCardProps } from './batch-shown.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { Tray } from './tray.tsx';

type Out = NonNullable<BatchCardProps['view']['out']>;

const WHY: Record<Out['why'], { title: string; how: string }> = {
  unsealed: { title: 'A lid that gives', how: 'Which jar? Then where it goes.' },
  process: {
    title: 'Not for the shelf: the process was not as tested',
    how: 'A sealed lid proves nothing about the time it boiled. Every jar goes one of these ways.',
  },
  acid: {
    title: 'Not for the shelf: the pH is too high',
    how: 'No second boil puts the acid right. Every jar goes one of these ways.',
  },
};

/** Jars that may not stand on the shelf: tick them (two taps for one), then the way their age allows. */
export function BatchOut({ view, actions, ids }: BatchCardProps) {
  const out = view.out;
  if (!out) return null;
  return (
    <Tray title={WHY[out.why].title}>
      <form action={actions.out}>
        <input type="hidden" name="id" value={ids[3]} />
        <input type="hidden" name="code" value={view.code} />
        <fieldset className={styles.jars}>
          <legend>{WHY[out.why].how}</legend>
          {out.pieces.map((n) => (
            <label key={n} className={styles.jar}>
              <input type="checkbox" name="pieces" value={n} defaultChecked={out.why !== 'unsealed'} />
              <span>Jar {n}</span>
            </label>
          ))}
        </fieldset>
        <div className={styles.ways}>
          {out.ways.map((way) => (
            <Button key={way} name="way" value={way} size="large" kind={way === 'discard' ? 'refuse' : 'quiet'}>
              {wordsOf(way, out)}
            </Button>
          ))}
        </div>
        {cautions(out).map((c) => (
          <Caution key={c} title={c} />
        ))}
      </form>
    </Tray>
  );
}

function wordsOf(way: Out['ways'][number], out: Out): string {
  if (way === 'fridge') return `Fridge, use by ${out.fridgeBy}`;
  if (way === 'freezer') return 'Freezer, 1½ in of space';
  if (way === 'process again') return `Process again: new lid, ${out.processMin} min`;
  return 'Discard, whole';
}

function cautions(out: Out): string[] {
  if (out.ways.length === 1 && out.ways[0] === 'discard')
    return [
      out.why === 'unsealed'
        ? 'More than 24 hours: an open jar goes out whole, untasted.'
        : 'More than 24 hours at room heat: they go out whole, untasted.',
    ];
  return [
    out.why === 'unsealed'
      ? 'A lid that gave is not pushed down and not used again. A jar frozen full to the brim cracks.'
      : 'Cool them first. A jar frozen full to the brim cracks.',
    ...(out.ways.includes('process again')
      ? ['Again means emptied, brought to a boil, clean hot jars, new lids and the full time. Hot jam burns.']
      : []),
  ];
}
