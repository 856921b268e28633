import styles from './status-mark.module.css';

/** Every state has a shape of its own and a word; colour only repeats them. No state means that food may be eaten. */
const MARKS = {
  sealed: { word: 'sealed', path: 'M3 10.5 8 15.5 17 5', filled: false, tone: 'steady' },
  done: { word: 'done', path: 'M3 10.5 8 15.5 17 5', filled: false, tone: 'steady' },
  'as-tested': { word: 'as tested', path: 'M3 10.5 8 15.5 17 5', filled: false, tone: 'steady' },
  hold: { word: 'on hold', path: 'M3 3h14v14H3z', filled: true, tone: 'refuse' },
  refused: { word: 'refused', path: 'M4 4l12 12M16 4 4 16', filled: false, tone: 'refuse' },
  'not-as-tested': { word: 'not as tested', path: 'M4 4l12 12M16 4 4 16', filled: false, tone: 'refuse' },
  unsealed: { word: 'not sealed', path: 'M10 3a7 7 0 1 0 .01 0M5 15 15 5', filled: false, tone: 'refuse' },
  due: { word: 'due', path: 'M10 2 19 18H1z', filled: true, tone: 'caution' },
  late: { word: 'past its time', path: 'M10 18 1 2h18z', filled: true, tone: 'refuse' },
  doubtful: { word: 'doubtful', path: 'M10 1 19 10 10 19 1 10z', filled: false, tone: 'caution' },
  unknown: { word: 'unknown', path: 'M6 7a4 4 0 1 1 5 4c-1 .5-1 1-1 2M10 17v.2', filled: false, tone: 'quiet' },
  waiting: {
    word: 'waiting',
    path: 'M4 2h12M4 18h12M5 2c0 8 10 8 10 16M15 2c0 8-10 8-10 16',
    filled: false,
    tone: 'quiet',
  },
  now: { word: 'now', path: 'M5 2 18 10 5 18z', filled: true, tone: 'steady' },
  planned: { word: 'planned', path: 'M10 2a8 8 0 1 0 .01 0', filled: false, tone: 'quiet' },
} as const;

export type StatusState = keyof typeof MARKS;

/** A state said by shape and word: `<StatusMark state="sealed" />`, with another word where the trade has one. */
export function StatusMark({ state, word }: { state: StatusState; word?: string }) {
  const mark = MARKS[state];
  return (
    <span className={`${styles.mark} ${styles[mark.tone]}`} data-state={state}>
      <svg viewBox="0 0 20 20" aria-hidden="true" className={mark.filled ? styles.filled : styles.drawn}>
        <path d={mark.path} />
      </svg>
      <span>{word ?? mark.word}</span>
    </span>
  );
}
