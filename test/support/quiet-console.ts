import { afterEach, beforeEach, expect, vi } from 'vitest';

/** A stray console.error or console.warn is a defect: the test that caused it fails. */
beforeEach(() => {
  vi.spyOn(console, 'error');
  vi.spyOn(console, 'warn');
});
afterEach(() => {
  expect(console.error).not.toHaveBeenCalled();
  expect(console.warn).not.toHaveBeenCalled();
  vi.restoreAllMocks();
});
