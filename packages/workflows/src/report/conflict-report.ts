/** Demands that cannot be met together, as the plan reports them. Days are ISO dates. */
export interface ReportDemand {
  readonly demand: 'at-least' | 'at-most' | 'yearly' | 'firm' | 'forbid' | 'rest' | 'no-planting' | 'hours';
  /** Of a promised sowing. */
  readonly id: string | null;
  readonly kind: string | null;
  readonly kindName: string;
  readonly plants: number | null;
  readonly place: string | null;
  readonly placeName: string;
  readonly from: string | null;
  readonly to: string | null;
}

export interface ReportConflict {
  /** None of these can be left out: without any one of them the others can be met. */
  readonly set: readonly ReportDemand[];
  /** The one that the plan was made without. */
  readonly drop: ReportDemand;
  /** Plants of it that could be had beside the others; null where it is no matter of plants. */
  readonly possiblePlants: number | null;
}
