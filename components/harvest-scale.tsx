import { kilograms, mass } from '#lib/units/format.ts';
import styles from './harvest-pad.module.css';
import type { PadState, PadTap } from './harvest-pad-state.ts';
import { netOfReading, type PadContainer } from './harvest-weights.ts';

export type HarvestScaleProps = { pad: PadState; containers: readonly PadContainer[]; tap: (t: PadTap) => void };

/** Which container stands on the scale, how many of them, and the buckets weighed so far. */
export function HarvestScale({ pad, containers, tap }: HarvestScaleProps) {
  const name = containers.find((c) => c.id === pad.containerId)?.label ?? 'container';
  return (
    <div className={styles.group}>
      <fieldset className={styles.chips}>
        <legend>Weighed in</legend>
        {containers.map((c) => (
          <button
            key={c.id}
            type="button"
            className={styles.chip}
            aria-pressed={c.id === pad.containerId}
            onClick={() => tap({ do: 'container', id: c.id })}
          >
            <span>{c.label}</span> <span className={styles.tare}>{mass(c.tareG)}</span>
          </button>
        ))}
      </fieldset>
      <div className={styles.stepper}>
        <span>How many on the scale at once</span>
        <button
          type="button"
          className={styles.step}
          aria-label={`One ${name} fewer`}
          disabled={pad.containerCount <= 1}
          onClick={() => tap({ do: 'container-count', count: pad.containerCount - 1 })}
        >
          −
        </button>
        <output aria-label={`${pad.containerCount} on the scale`}>{pad.containerCount}</output>
        <button
          type="button"
          className={styles.step}
          aria-label={`One ${name} more`}
          onClick={() => tap({ do: 'container-count', count: pad.containerCount + 1 })}
        >
          +
        </button>
      </div>
      {pad.readings.length > 0 ? (
        <ol className={styles.readings} aria-label="Buckets weighed so far">
          {pad.readings.map((r, i) => (
            <li key={i}>
              <span>
                {r.text} {r.unit}{' '}
                <span className={styles.hint}>
                  less {r.containerCount > 1 ? `${r.containerCount} × ` : ''}
                  {containers.find((c) => c.id === r.containerId)?.label}
                </span>
              </span>
              <b>{kilograms(netOfReading(r, containers))}</b>
              <button
                type="button"
                className={styles.step}
                aria-label={`Take bucket ${i + 1} off the list`}
                onClick={() => tap({ do: 'remove-reading', index: i })}
              >
                ✕
              </button>
            </li>
          ))}
        </ol>
      ) : null}
    </div>
  );
}
