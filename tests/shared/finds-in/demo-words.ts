import { join } from 'node:path';
import { readFindsInFile } from '../../../src/loaders/read-finds-in.ts';
import { home } from '../../demo.ts';

/** The product's own table of other people's words. */
export const demoWords = await readFindsInFile(join(home, 'content'));
