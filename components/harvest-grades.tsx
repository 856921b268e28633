import { kilograms } from '#lib/units/format.ts';
import styles from './harvest-pad.module.css';
import { GRADES, gradeSplit, type PadState, type PadTap } from './harvest-pad-state.ts';

export type HarvestGradesProps = { pad: PadState; net: number; tap: (t: PadTap) => void };

/**
 * Grades by weight. Untouched, all of it is perfect. Tap a grade and type its weight; what is left goes to the best grade that has
 * no weight of its own, or to the one told to take the rest.
 */
export function HarvestGrades({ pad, net, tap }: HarvestGradesProps) {
  const { grams, rest, over } = gradeSplit(pad, Math.max(0, net));
  const split = Object.keys(pad.gradeTexts).length > 0 || pad.restGrade !== null;
  return (
    <div className={styles.group}>
      <fieldset className={styles.grades}>
        <legend>Grade</legend>
        {GRADES.map((grade) => (
          <div key={grade} className={styles.grade} data-focus={pad.focus === grade || undefined}>
            <button
              type="button"
              className={styles.gradeKey}
              aria-pressed={pad.focus === grade}
              onClick={() => tap({ do: 'focus', on: grade })}
            >
              <span>{grade}</span>
              <b>{kilograms(grams[grade])}</b>
            </button>
            {rest === grade ? (
              <span className={styles.takesRest}>{split ? 'the rest' : 'all of it'}</span>
            ) : (
              <button
                type="button"
                className={styles.restKey}
                aria-label={`${grade} takes the rest`}
                onClick={() => tap({ do: 'rest', grade })}
              >
                {split ? 'rest' : 'all'}
              </button>
            )}
          </div>
        ))}
      </fieldset>
      {over > 0 ? <p className={styles.refused}>The grades are {kilograms(over)} more than was weighed.</p> : null}
      {split ? (
        <button type="button" className={styles.chip} onClick={() => tap({ do: 'clear-grades' })}>
          All perfect again
        </button>
      ) : null}
    </div>
  );
}
