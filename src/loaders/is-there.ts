import { access } from 'node:fs/promises';

/** Whether a file can be seen. */
export const isThere = (file: string): Promise<boolean> =>
  access(file).then(
    () => true,
    () => false,
  );
