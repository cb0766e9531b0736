/** A drawing of the pack, by its id, with its proportions. */
export interface Drawn {
  readonly id: string;
  readonly width: number;
  readonly height: number;
}
