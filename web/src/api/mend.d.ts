/** Where a choice stands in its week, each by its index. */
export interface ChoicePlace {
  day: number;
  meal: number;
  offer: number;
  choice: number;
}

/** Something that must stay as it is. */
export type MendLock =
  /** A day: its choices, and the recipes that it serves. */
  | { kind: "day"; date: IsoDate }
  /** A choice, and the recipe that it serves. */
  | { kind: "choice"; place: ChoicePlace }
  /** A recipe's lines and portion. */
  | { kind: "recipe"; recipe: string }
  /** A line of a recipe, by its index. */
  | { kind: "line"; recipe: string; line: number };

/** How much of a dish is a serving. */
export interface MendPortion {
  servings: Decimal;
  size: Recipe["servingSize"] | null;
  words: string;
}

/** One change. Planned servings and planned meals stay. */
export type WeekChange =
  | {
      kind: "line";
      recipe: string;
      line: number;
      was: Recipe["lines"][number];
      lines: Recipe["lines"];
      way: "swap" | "amount";
      /** For a swap: what is done. */
      change?: { kind: "food" | "half" | "move"; [detail: string]: unknown };
      /** For an amount: how many times the old one. */
      share?: Decimal;
    }
  | { kind: "portion"; recipe: string; share: Decimal; was: MendPortion; becomes: MendPortion }
  | { kind: "choice"; place: ChoicePlace; date: IsoDate; was: string; becomes: string };

/** What is asked of a search. All of it may be left out. */
export interface MendAsk {
  /** By how many standard uncertainties averages must lie inside their limits; 1 unless said. */
  margin?: number;
  /** Kinds of change; all unless said. */
  ways?: { swaps?: boolean; amounts?: boolean; portions?: boolean; choices?: boolean };
  locks?: MendLock[];
  /** Changes that are not wanted. */
  declined?: WeekChange[];
  /** Whether, of plans with as many changes, a cheaper one is wanted. */
  cost?: boolean;
  /** Prices per 100 g. */
  prices?: { food: FoodId; per100G: Decimal }[];
  mostLines?: number;
  foodsForALine?: number;
  recipesForAChoice?: number;
}

/** How a week stands with one requirement. */
export interface MendStanding {
  requirement: {
    service: { kind: string; group: string };
    date: IsoDate | null;
    words: string;
    nutrient: number | null;
    bound: "at least" | "at most" | "below";
    limit: Decimal;
    unit: string;
    nth: number;
  };
  /** At least `low`; at most `high` where that is known. */
  figure: { low: Decimal; high: Decimal | null } | null;
  digits: number;
  verdict: "met" | "missed" | "unknown";
  uncertainty: Decimal | null;
}

/** A change of a plan with what it does when it is made alone. */
export interface PlannedChange {
  change: WeekChange;
  /** How far it takes the dish from what it was, 0 to 100. */
  departure: number;
  effects: { before: MendStanding; after: MendStanding }[];
  /** Allergens to which words point in the new dish and not in the old one. Read the labels. */
  allergens: string[];
  /** What it adds to the cost of the week; null where a price is missing. */
  cost: Decimal | null;
}

/** How a search ends. */
export type MendOutcome =
  | { kind: "nothingToMend" }
  | {
      kind: "mended";
      plan: { changes: PlannedChange[]; after: MendStanding[] };
      /** Proven least among the changes that were looked at, or so many more than the least. */
      proof: { kind: "least" } | { kind: "atMostMore"; changes: number };
    }
  /** Requirements that no set of the changes looked at can keep together. */
  | { kind: "impossible"; because: MendStanding[]; smallest: boolean }
  | { kind: "notFound"; stopped: boolean };

/** How far a search has come. */
export interface MendProgress {
  doing: "looking" | "choosing" | "explaining" | "done";
  looked: number;
  toLook: number;
  /** Changes found that could help. */
  changes: number;
  /** Plans that the engine has checked. */
  checked: number;
  refused: number;
  /** Changes of the best plan so far. */
  best: number | null;
  /** No plan has fewer. */
  least: number;
}

/** The end of a search. */
export interface MendedWeek {
  outcome: MendOutcome;
  progress: MendProgress;
}
