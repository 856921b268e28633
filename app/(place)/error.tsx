'use client';
import { ErrorState } from '#components/error-state.tsx';

/** A fault of the program: what is recorded is untouched, and the page can be tried again. */
export default function PlaceError({ reset }: { error: Error; reset: () => void }) {
  return (
    <ErrorState
      what="This page could not be put together."
      kept="Nothing that was recorded is lost."
      next="Try again. If it stays so, the window in which Stillroom was started says more."
      action={
        <button type="button" onClick={reset}>
          Try again
        </button>
      }
    />
  );
}
