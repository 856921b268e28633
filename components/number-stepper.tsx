'use client';
import { useId, useState } from 'react';
import styles from './number-stepper.module.css';

export type NumberStepperProps = {
  name: string;
  label: string;
  defaultValue: number;
  min?: number;
  max?: number;
  /** Said after the number: "jars". */
  unit?: string;
  onCount?: (count: number) => void;
};

/** A count by two large buttons (jars, buckets); the number itself can be typed, and posts without a script. */
export function NumberStepper({ name, label, defaultValue, min = 0, max = 999, unit, onCount }: NumberStepperProps) {
  const id = useId();
  const [text, setText] = useState(String(defaultValue));
  const count = /^\d+$/.test(text) ? Number(text) : null;
  const set = (next: number) => {
    const bounded = Math.min(max, Math.max(min, next));
    setText(String(bounded));
    onCount?.(bounded);
  };
  return (
    <div className={styles.stepper}>
      <label htmlFor={id}>{label}</label>
      <div className={styles.line}>
        <button
          type="button"
          aria-label={`${label}: one fewer`}
          disabled={count !== null && count <= min}
          onClick={() => set((count ?? min) - 1)}
        >
          −
        </button>
        <input
          id={id}
          name={name}
          value={text}
          inputMode="numeric"
          pattern="[0-9]*"
          autoComplete="off"
          onChange={(e) => {
            setText(e.target.value);
            if (/^\d+$/.test(e.target.value)) onCount?.(Number(e.target.value));
          }}
        />
        <button
          type="button"
          aria-label={`${label}: one more`}
          disabled={count !== null && count >= max}
          onClick={() => set((count ?? min - 1) + 1)}
        >
          +
        </button>
        {unit ? <span>{unit}</span> : null}
      </div>
      {count === null || count < min || count > max ? (
        <p className={styles.wrong}>
          A whole number from {min} to {max}.
        </p>
      ) : null}
    </div>
  );
}
