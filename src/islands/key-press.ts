/** True for the two keys that press a button. */
export const isKeyPress = (event: Pick<KeyboardEvent, 'key'>): boolean =>
  event.key === 'Enter' || event.key === ' ';
