import { map } from 'nanostores';

/** How far each activity of this page is: its id to a share from 0 to 1, 1 once its record has been read. */
export const $progress = map<Record<string, number>>({});

/** Notes how far an activity is. */
export const noteProgress = (activity: string, share: number): void => $progress.setKey(activity, share);
