/**
 * Every publication a figure in this program rests on, by key. A figure without a publication names one of the last
 * six keys, so that "from memory" or "estimate" is as visible as a citation.
 */
import type { SourceText } from './source-text.ts';
import { CANNING_SOURCES } from './sources-canning.ts';
import { COMPOSITION_SOURCES } from './sources-composition.ts';
import { KEEPING_SOURCES } from './sources-keeping.ts';

const UNPUBLISHED_SOURCES = {
  MEMORY: { title: 'From memory of handbooks; no copy read' },
  COMMON_PRACTICE: { title: 'Common practice of home preserving' },
  ESTIMATE: { title: 'Estimate of this project; replace it with your own records' },
  COMPUTED: { title: 'Computed by this program from cited figures' },
  UNOFFICIAL_PAGE: { title: "Unofficial page or maker's manual, read once; weak" },
  HOUSE_RULE: { title: 'Rule of this project, stricter than or beside the published ones' },
} as const satisfies Record<string, SourceText>;

export const SOURCES = {
  ...CANNING_SOURCES,
  ...COMPOSITION_SOURCES,
  ...KEEPING_SOURCES,
  ...UNPUBLISHED_SOURCES,
} as const;

export type SourceId = keyof typeof SOURCES;
