/** Ids of the demo's own rows, derived from the place and the code, so that the same thing always has the same id. */
export const demoId = (placeId: string, ...parts: string[]): string => [placeId, ...parts].join(':');
export const seasonActId = (placeId: string, key: string): string => `${placeId}:season:${key}`;
