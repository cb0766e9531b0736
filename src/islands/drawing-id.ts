/** The id of a find's drawing in the page: each is drawn once and shown wherever it is wanted. */
export const drawingId = (find: string): string => `find-${find}`;
