/** A page of this site by its path, under whatever folder the site stands in. @example href('lessons/x/') // '/lessons/x/' */
export const href = (path: string): string => `${import.meta.env.BASE_URL.replace(/\/$/, '')}/${path}`;
