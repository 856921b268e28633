/** One publication: its title with edition, where a copy was read, and what to hold against it. */
export interface SourceText {
  readonly title: string;
  readonly where?: string;
  readonly note?: string;
}
