/** What a group does in a slot: a station by its number, lunch, a slot with nothing on, or not there. */
export type Doing =
  | { readonly kind: 'station'; readonly station: number }
  | { readonly kind: 'lunch' }
  | { readonly kind: 'free' }
  | { readonly kind: 'away' };

/** A finished timetable. */
export interface DayPlan {
  /** By group, then by slot. */
  readonly groups: readonly (readonly Doing[])[];
  /** By adult, then by slot: the number of the station, or null for a slot off. */
  readonly crew: readonly (readonly (number | null)[])[];
}
