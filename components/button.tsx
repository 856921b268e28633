import type { ButtonHTMLAttributes } from 'react';
import styles from './button.module.css';
import { classNames } from './class-names.ts';

export type ButtonLook = {
  /** The one action of a tray is primary; the rest are quiet; `refuse` throws something away. */
  kind?: 'primary' | 'quiet' | 'refuse';
  /** `large` (64 px) for the shed and the stove. */
  size?: 'normal' | 'large';
  /** As wide as what holds it. */
  block?: boolean;
};

/** Classes of a button's look, shared with LinkButton. */
export const buttonClass = ({ kind = 'primary', size = 'normal', block = false }: ButtonLook): string =>
  classNames(styles.button, styles[kind], size === 'large' && styles.large, block && styles.block);

/** A button of the house. Type is `submit` unless said. */
export function Button({
  kind,
  size,
  block,
  className,
  type = 'submit',
  ...rest
}: ButtonLook & ButtonHTMLAttributes<HTMLButtonElement>) {
  const look = { ...(kind && { kind }), ...(size && { size }), ...(block && { block }) };
  return <button type={type} className={classNames(buttonClass(look), className)} {...rest} />;
}
