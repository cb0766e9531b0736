import type { Library } from '../../shared/library/index.ts';

/** A type of object as people say it; its own word where the vocabulary has none. */
export const typeLabel = ({ vocabulary }: Pick<Library, 'vocabulary'>, type: string): string =>
  vocabulary.objectTypes.find(({ id }) => id === type)?.label ?? type.replaceAll('-', ' ');
