'use client';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { Problem } from './problem.tsx';

/** Measures the labels on the screen: a text that is cut off is said, and such a sheet is not for the printer. */
export function LabelFit({ children }: { children: ReactNode }) {
  const room = useRef<HTMLDivElement>(null);
  const [cut, setCut] = useState(0);
  useEffect(() => {
    const faces = [...(room.current?.querySelectorAll<HTMLElement>('[data-label]') ?? [])];
    void document.fonts.ready.then(() => setCut(faces.filter((f) => f.scrollHeight > f.clientHeight + 1).length));
  }, []);
  return (
    <>
      {cut > 0 ? (
        <div className="no-print">
          <Problem title="Too much text">
            {cut} labels would be cut off at the bottom. Print them as single labels, which are larger.
          </Problem>
        </div>
      ) : null}
      <div ref={room} data-cut={cut}>
        {children}
      </div>
    </>
  );
}
