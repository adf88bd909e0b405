/** What the plan says about the ground itself: rests, handovers, feeding, kit. Days are ISO dates. */

/** Strips on which a family comes back before its rest is over. */
export interface ReportRest {
  readonly family: string;
  /** Disease behind the rest ('clubroot'), and whether it is on record there; null: none of its own. */
  readonly disease: string | null;
  readonly onRecord: boolean;
  /** Years since it was planted there last, and the rest it should have had. */
  readonly afterYears: number;
  readonly restYears: number;
  readonly m2: number;
}

/** One crop cleared and the next planted in the same strips, in one or several passes. */
export interface ReportHandover {
  /** Sowing that is cleared. */
  readonly from: string;
  readonly fromKindName: string;
  readonly toKind: string;
  readonly toKindName: string;
  readonly placeName: string;
  readonly passes: readonly {
    /** Monday of the week. */
    readonly week: string;
    readonly strips: number;
    readonly m2: number;
    /** Sowing that takes them. */
    readonly to: string;
  }[];
}

export interface ReportFeeding {
  readonly place: string;
  readonly placeName: string;
  /** Which of the like places, 1-based; 0 where there is only one. */
  readonly number: number;
  /** Monday of the week in which the crop takes its ground. */
  readonly day: string;
  /** Sowing that it is for. */
  readonly before: string;
  readonly kindName: string;
  readonly compostL: number;
  readonly barrows: number;
  /** Litres that need not be brought: the ground was fed for the crop before, or legumes left their nitrogen. */
  readonly savedL: number;
  /** Acid ground is limed in the winter before. */
  readonly lime: boolean;
  /** Legumes whose tops are left in the ground: sowing ids. */
  readonly residueOf: readonly string[];
}

export interface ReportKit {
  /** 'mesh' | 'net' | 'fleece' (metres of bed) | 'canes' (pieces) */
  readonly kit: string;
  readonly owned: number;
  /** Most that is out at once. */
  readonly most: number;
  readonly lent: readonly {
    readonly sowing: string;
    readonly placeName: string;
    readonly amount: number;
    readonly from: string;
    readonly to: string;
  }[];
  /** Straight from one bed to another. */
  readonly moves: readonly {
    readonly day: string;
    readonly amount: number;
    readonly from: string;
    readonly fromPlaceName: string;
    readonly to: string;
    readonly toPlaceName: string;
  }[];
}

/** Chosen by the program and not to be laid out in real beds: dropped, or sown on less ground. */
export interface ReportNotPlaced {
  readonly kind: string;
  readonly kindName: string;
  readonly sow: string;
  readonly wantedM2: number;
  readonly placedM2: number;
}

export interface ReportGuest {
  readonly from: string;
  /** Monday of the week from which the ground is its own. */
  readonly until: string;
  readonly hosts: readonly { readonly sowing: string; readonly strips: number }[];
}
