/** The id of a good's drawing in the page. */
export const goodDrawingId = (good: string): string => `good-${good}`;
