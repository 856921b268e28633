'use client';
import { Button } from './button.tsx';

/** Opens the browser's own print window: the page leaves its buttons and forms off the paper. */
export function PrintButton({ label = 'Print the list' }: { label?: string }) {
  return (
    <Button type="button" kind="quiet" onClick={() => window.print()}>
      {label}
    </Button>
  );
}
