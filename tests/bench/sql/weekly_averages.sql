-- The average meal of each week, meal and grade group, with the digits that Gramwright prints.
--
-- Averages are weighted by planned servings (7 CFR 210.10(i), 220.8(i)): over the days with a
-- meal of one kind for one grade group,
--
--     average = sum of (planned servings x amount per serving) / sum of planned meals.
--
-- Tables, one Parquet file each. Amounts are DECIMAL(38, 24); a missing cell is NULL.
--
--     nutrient (nutrient, name, unit, digits)       digits: decimal places in print
--     value    (food, nutrient, per_100_g)          no row: the value is not known
--     recipe   (district, recipe, servings)
--     part     (district, recipe, part, food, grams)  the foods of a recipe; food or grams may
--                                                   be unknown
--     kept     (district, recipe, part, nutrient, share)  what stays of a part that is drained,
--                                                   rinsed or fried; no row: all of it
--     meal     (district, week, day, meal, grade_group, planned_meals)
--     choice   (district, week, day, meal, grade_group, recipe, planned)
--
-- A missing value is not zero: `known` is the sum of what is known, and `missing` counts the
-- parts, choice by choice, that lack a weight or a value. A choice of which no serving is planned
-- brings nothing. A figure is brought to 15 decimal places, then rounded half away from zero.
--
-- Decimals of two scales are brought to the larger one before they are multiplied or divided; so
-- each result is cast back to as many places as the next step can bear without overflow.
WITH brought AS (
    -- What each part brings of each nutrient to the whole recipe, times 100.
    SELECT
        part.district,
        part.recipe,
        nutrient.nutrient,
        CAST(
            CAST(CAST(part.grams AS DECIMAL(76, 24)) * value.per_100_g AS DECIMAL(76, 24))
                * coalesce(kept.share, CAST(1 AS DECIMAL(38, 24)))
        AS DECIMAL(76, 24)) AS amount
    FROM part
    CROSS JOIN nutrient
    LEFT JOIN value ON value.food = part.food AND value.nutrient = nutrient.nutrient
    LEFT JOIN kept ON kept.district = part.district AND kept.recipe = part.recipe
        AND kept.part = part.part AND kept.nutrient = nutrient.nutrient
),
total AS (
    SELECT
        district,
        recipe,
        nutrient,
        CAST(
            coalesce(sum(amount), CAST(0 AS DECIMAL(76, 24))) * CAST(0.01 AS DECIMAL(4, 2))
        AS DECIMAL(76, 24)) AS known,
        count(*) - count(amount) AS missing
    FROM brought
    GROUP BY district, recipe, nutrient
),
planned AS (
    SELECT district, week, meal, grade_group, sum(planned_meals) AS meals
    FROM meal
    GROUP BY district, week, meal, grade_group
),
served AS (
    -- Batches of each recipe over the week, and how often it is chosen.
    SELECT
        choice.district,
        choice.week,
        choice.meal,
        choice.grade_group,
        choice.recipe,
        sum(choice.planned) AS planned,
        count(*) AS times
    FROM choice
    WHERE choice.planned > 0
    GROUP BY choice.district, choice.week, choice.meal, choice.grade_group, choice.recipe
),
average AS (
    SELECT
        served.district,
        served.week,
        served.meal,
        served.grade_group,
        total.nutrient,
        CAST(
            sum(
                CAST(
                    CAST(total.known * served.planned AS DECIMAL(76, 20))
                        / CAST(recipe.servings AS DECIMAL(38, 10))
                AS DECIMAL(76, 20))
            ) / max(CAST(planned.meals AS DECIMAL(38, 10)))
        AS DECIMAL(76, 15)) AS known,
        sum(total.missing * served.times) AS missing
    FROM served
    JOIN recipe ON recipe.district = served.district AND recipe.recipe = served.recipe
    JOIN total ON total.district = served.district AND total.recipe = served.recipe
    JOIN planned ON planned.district = served.district AND planned.week = served.week
        AND planned.meal = served.meal AND planned.grade_group = served.grade_group
    GROUP BY served.district, served.week, served.meal, served.grade_group, total.nutrient
)
SELECT
    average.district,
    average.week,
    average.meal,
    average.grade_group,
    average.nutrient,
    CASE nutrient.digits
        WHEN 0 THEN CAST(round(average.known, 0) AS DECIMAL(38, 3))
        WHEN 1 THEN CAST(round(average.known, 1) AS DECIMAL(38, 3))
        WHEN 2 THEN CAST(round(average.known, 2) AS DECIMAL(38, 3))
        ELSE CAST(round(average.known, 3) AS DECIMAL(38, 3))
    END AS known,
    average.missing
FROM average
JOIN nutrient ON nutrient.nutrient = average.nutrient
ORDER BY district, week, meal, grade_group, nutrient
