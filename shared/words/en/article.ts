/** The article before a word. @example article('estimate') // 'an' */
export const article = (word: string): string => (/^[aeiou]/.test(word) ? 'an' : 'a');
