/** What every compiled activity holds, whatever its kind. */
export interface ActivityBase {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  readonly minutes: number;
  /** It is about making or using edged stone, whatever it shows: cautions go with it. */
  readonly aboutMaking?: true;
}
