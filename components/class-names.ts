/** Joins class names, leaving out what is absent: `classNames('a', flag && 'b')`. */
export function classNames(...names: readonly (string | false | null | undefined)[]): string {
  return names.filter(Boolean).join(' ');
}
