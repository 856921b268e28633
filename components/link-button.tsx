import Link from 'next/link';
import type { ReactNode } from 'react';
import { type ButtonLook, buttonClass } from './button.tsx';

export type LinkButtonProps = ButtonLook & { href: string; children: ReactNode };

/** A link that looks like the buttons: for going somewhere, not for changing something. */
export function LinkButton({ href, children, ...look }: LinkButtonProps) {
  return (
    <Link href={href} prefetch={false} className={buttonClass(look)}>
      {children}
    </Link>
  );
}
