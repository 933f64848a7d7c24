/** A decimal number as text, as in "2.5". */
export type Decimal = string;

/** A food: "SR28:01001" by its number in the dataset, "OWN:7" for one of the office's own. */
export type FoodId = string;

/** A day, as in "2026-11-30". */
export type IsoDate = string;

/** A food found by words. */
export interface FoodHit {
  food: FoodId;
  description: string;
  group: string;
  /** From 0 to 100: how sure it is that this food is meant. */
  confidence: number;
}

/** What is wrong with something, and what to do about it. */
export interface Problem {
  message: string;
  remedy: string;
}

/** A sum and how much of it is known. */
export interface Amount {
  /** What is known, a lower bound unless `complete`; null where nothing is. */
  known: Decimal | null;
  complete: boolean;
  /** Share of the weight whose value is known, 0 to 1. */
  coverage: Decimal;
  /** Terms without a known weight. */
  unweighed: number;
  /** Terms with a weight but no value. */
  missing: number;
}

/** An ingredient line as it was read. */
export interface LineReading {
  text: string;
  kind: "ingredient" | "heading" | "blank";
  foodWords: string;
  preparation: string[];
  /** The food that is taken. */
  food: FoodId | null;
  description: string | null;
  /** The recipe of the book that the line names. */
  recipe: string | null;
  /** Foods that may be meant, best first. */
  matches: FoodHit[];
  /** Weight of the line: in the dish where a recipe was studied, else as stated. */
  grams: Decimal | null;
  leastGrams: Decimal | null;
  mostGrams: Decimal | null;
  /** The arithmetic of the weight, each step with its `kind`. */
  steps: { kind: string; [detail: string]: unknown }[];
  /** What a person may want to look at, each with its `kind`. */
  doubts: { kind: string; [detail: string]: unknown }[];
  /** Why the line is not counted. */
  problem: Problem | null;
}

/** What a person has set right about a line. */
export interface Correction {
  food?: FoodId;
  recipe?: string;
  weight?: Decimal;
  basis?: "asPurchased" | "ediblePortion";
  cooked?: { food: FoodId; weight?: Decimal };
  treatments?: string[];
  credits?: { component: string; amount: Decimal; marks?: string[]; reason: string }[];
}

/** A recipe. */
export interface Recipe {
  id: string;
  title: string;
  servings: Decimal;
  servingWords?: string;
  servingSize?:
    | { by: "weight"; serving: Decimal }
    | { by: "volume"; serving: Decimal; batch: Decimal }
    | { by: "count"; serving: Decimal; batch: Decimal };
  finishedWeight?: Decimal;
  lines: { text: string; correction?: Correction }[];
  beans?: "vegetable" | "meat alternate";
  method?: string;
}

/** One nutrient of a recipe, in its own unit. */
export interface NutrientFigures {
  /** Number in the dataset. */
  nutrient: number;
  tagname: string;
  name: string;
  unit: string;
  /** Decimal places that the dataset prints. */
  decimals: number;
  perServing: Amount | null;
  per100G: Amount | null;
  whole: Amount | null;
}

/** All that is found out about a recipe. */
export interface RecipeFigures {
  servings: Decimal;
  /** Weight of the batch. */
  grams: Decimal;
  /** Indices of lines that are not counted. */
  unknownLines: number[];
  lines: LineReading[];
  nutrients: NutrientFigures[];
  /** What a serving counts toward meal components. */
  credits: {
    component: string;
    unit: string;
    exact: Decimal;
    credited: Decimal;
    complete: boolean;
  }[];
  allergens: {
    allergen: string;
    presence: "unknown" | "mayBePresent" | "contains";
    evidence: { found: string; why: string; source: string }[];
    lines: number[];
  }[];
  /** To be shown with the allergens. */
  allergenCaution: string;
}

/** A week of menus. */
export interface Week {
  id: string;
  title: string;
  days: {
    date: IsoDate;
    meals: {
      kind: "breakfast" | "lunch" | "snack" | "supper";
      group: string;
      plannedMeals: Decimal;
      offers: {
        title: string;
        take: number;
        choices: { recipe: string; planned: Decimal }[];
      }[];
    }[];
  }[];
}

/** An office's book, as the page saves it in a file. */
export interface Book {
  version: number;
  office: string;
  recipes: Recipe[];
  weeks: Week[];
  labels?: unknown[];
  ownFoods?: unknown[];
  ownRules?: unknown;
  switches?: unknown;
}

/** Unknown: what is missing could decide it either way. */
export type Verdict = "met" | "missed" | "unknown";

/** A requirement on the average meal of a week. */
export interface Finding {
  what: string;
  nutrient: number;
  basis: string;
  bound: "at least" | "at most" | "below";
  limit: Decimal;
  unit: string;
  /** A lower bound unless `complete`; null where nothing is known. */
  figure: Decimal | null;
  /** Decimal places that show on which side of the limit the figure lies. */
  decimals: number;
  complete: boolean;
  coverage: Decimal;
  verdict: Verdict;
  /** Where the limit stands, and whether it was read there. */
  paragraph: string;
  status: string;
}

/** A figure between bounds; `high` is null where an unknown part could be of any size. */
export interface Bounds {
  low: Decimal;
  high: Decimal | null;
}

/** A requirement on what the meals of a week offer. */
export interface PatternFinding {
  service: { kind: string; group: string };
  /** The day; null for a requirement on the week. */
  date: IsoDate | null;
  rule: {
    words: string;
    bound: "at least" | "at most" | "below";
    limit: Decimal;
    unit: string;
    paragraph: string;
    source: string;
    status: string;
  };
  figure: Bounds;
  average: Bounds | null;
  digits: number;
  verdict: Verdict;
  carriers: { date: IsoDate; recipe: string; amount: Bounds }[];
}

/** How a week stands. */
export interface WeekFigures {
  services: {
    meal: string;
    group: string;
    days: IsoDate[];
    plannedMeals: Decimal;
    findings: Finding[];
    pattern: PatternFinding[];
  }[];
}

/** What an office decides about a Nutrition Facts panel. */
export interface PanelOptions {
  servingWords?: string;
  servingWeight?: Decimal;
  servingsPerContainer?: Decimal;
  audience?: "4 and over" | "1 to 3";
  form?: "vertical" | "tabular" | "linear";
  dual?: boolean;
  content?: "full" | "withoutInsignificant" | "simplified";
  also?: number[];
}

/** One row of a panel. */
export interface PanelRow {
  nutrient: number;
  name: string;
  group: string;
  indent: number;
  bold: boolean;
  cells: {
    status: { kind: "known" | "lowerBound" | "missing"; coverage?: Decimal };
    exact: Decimal | null;
    amount: string;
    line: string;
    shortLine: string;
    percent: string | null;
  }[];
}

/** A Nutrition Facts panel: all that it prints, as text. */
export interface FactsPanel {
  form: string;
  layout: unknown[];
  servings: string;
  servingSize: string;
  columns: { heading: string; servings: Decimal }[];
  calories: PanelRow;
  rows: PanelRow[];
  leftOut: number[];
  insignificant: string | null;
  footnote: { words: string };
  notes: { words: string }[];
  simplifiedAllowed: boolean;
  problems: string[];
  complete: boolean;
}

/** What is thrown. */
export interface EngineError {
  kind: "tables" | "input" | "book" | "recipe" | "week";
  /** Where in the arguments, as in "recipe.lines[2].text". */
  where: string;
  message: string;
  remedy: string;
}

/** Where one value of the dataset comes from. */
export interface ValueSource {
  /** Number of analyses; zero where the value was calculated or imputed. */
  dataPoints: number;
  standardError: Decimal | null;
  source: string | null;
  derivation: string | null;
}

/** A standard uncertainty, in the unit of its figure. */
export interface Uncertainty {
  standard: Decimal;
  /** Share of its square that rests on assumed errors, 0 to 1. */
  assumed: Decimal;
  atLeast: boolean;
}

/** A nutrient in one serving; `uncertainty` is null before `loadProvenance`. */
export interface ServingAmount {
  nutrient: number;
  amount: unknown;
  uncertainty: Uncertainty | null;
}

/** Carbohydrate in one serving. Show the caution with it, always. */
export interface CarbohydrateCount {
  carbohydrate: ServingAmount;
  fibre: ServingAmount;
  caution: string;
}

/** What kind of food claims are asked for, and by which reference amount. */
export interface ClaimOptions {
  kind?: string;
  referenceAmount?: Decimal;
  twoTablespoonsOrLess?: boolean;
  servingWeight?: Decimal;
  ingredients?: unknown[];
}

/** Each claim with its outcome, what must be disclosed, and cautions. */
export type ClaimReport = Record<string, unknown>;

/** Temperatures for the kitchen. Show the caution with them, always. */
export interface Temperatures {
  caution: string;
  steps: {
    guidance: "consumer" | "food code";
    step: "cook" | "hold" | "cool" | "reheat" | "date";
    what: string;
    celsius: Decimal;
    fahrenheit: Decimal;
    duration: string;
    paragraph: string;
    source: string;
    status: string;
  }[];
}

/** Every step of a recipe's study, as the engine keeps it. */
export type RecipeSteps = Record<string, unknown>;

/** Everything found out about a week, as the engine keeps it. */
export type WeekSteps = Record<string, unknown>;

/** What to move. Nutrients are named by their number in the dataset. */
export type SwapAim =
  | { kind: "less"; nutrient: number }
  | { kind: "more"; nutrient: number }
  | { kind: "lessCost" };

/** For which line, and what is asked of a swap. */
export interface SwapRequest {
  /** Index of the line. */
  line: number;
  /** A weight of zero counts nothing. */
  goals: { aim: SwapAim; weight: number }[];
  options?: {
    /** How far the calories of a serving may move, both as numbers above zero. */
    energy: { fall: Decimal; rise: Decimal };
    credit?: "keep" | "notAsked";
    /** By what the new amount is found; by the kind of food where nothing is said. */
    amount?: "volume" | "weight" | "credit";
    prices?: { food: FoodId; per100G: Decimal }[];
  };
  /** Foods that are proposed at most. */
  limit?: number;
}

/** A nutrient before and after; null where a bound is not known. */
export interface SwapNutrient {
  nutrient: number;
  before: Amount;
  after: Amount;
  change: { low: Decimal | null; high: Decimal | null };
}

/** A proposal for a line. */
export interface SwapProposal {
  change:
    | { kind: "food" | "half"; food: FoodId; description: string }
    | { kind: "move"; id: string; words: string };
  /** What takes the line's place. */
  lines: { text: string; correction: Correction }[];
  /** In one serving. */
  nutrients: SwapNutrient[];
  credits: { component: string; before: Decimal; after: Decimal; complete: boolean }[];
  /** Change of a serving's cost; null where a price is missing. */
  cost: Decimal | null;
  reasons: string[];
  /** The average meals of the book's weeks that the recipe reaches. */
  weeks: {
    week: string;
    title: string;
    services: { meal: string; group: string; nutrients: SwapNutrient[] }[];
    /**
     * Requirements whose verdict becomes another one, and those that stay missed; null where
     * nothing is required.
     */
    verdicts: {
      requirement: MendStanding["requirement"];
      before: MendStanding["verdict"] | null;
      after: MendStanding["verdict"] | null;
    }[];
    problem: string | null;
  }[];
}

/** All that is proposed for a line, best first. */
export interface SwapProposals {
  foods: SwapProposal[];
  moves: SwapProposal[];
  /** How many foods that play the part are not proposed, and why. */
  leftOut: { unknown: number; energy: number; credit: number; allergens: number };
}
