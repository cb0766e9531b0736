/**
 * An activity as an island needs it: photographs lie once in the page among its drawings, and not again in the props.
 *
 * @example withoutPhotos({ drawing: { id: 'P3-125', photo } }) // { drawing: { id: 'P3-125' } }
 */
export const withoutPhotos = <Activity>(activity: Activity): Activity =>
  // `photo` may be missing wherever it stands, so the type is the same without it.
  JSON.parse(
    JSON.stringify(activity, (key, value: unknown) => (key === 'photo' ? undefined : value)),
  ) as Activity;
