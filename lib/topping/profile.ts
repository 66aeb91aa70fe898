/** The topping at one place along the span. */
export interface ToppingPoint {
  readonly share: number;
  /** Rise of the member's top above its ends, in; negative where it sags. */
  readonly riseIn: number;
  readonly thicknessIn: number;
}
