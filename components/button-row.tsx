import type { ReactNode } from 'react';

/** Buttons beside each other with the 12 px gap that keeps a knuckle off the wrong one. */
export function ButtonRow({ children }: { children: ReactNode }) {
  return (
    <div style={{ display: 'flex', flexWrap: 'wrap', gap: 'var(--gap)', marginTop: '1rem', alignItems: 'center' }}>
      {children}
    </div>
  );
}
