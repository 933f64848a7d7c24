-- Mass of each line: count × grams of the unit.
INSERT INTO weighed
SELECT recipe, food, num / den, num % den
FROM (
    SELECT line.recipe, line.food,
        CASE WHEN line.seq IS NULL
            THEN line.count_num * unit.grams_num * 57600000
            ELSE line.count_num * measure.gram_hundredths * 10 * 57600000 END AS num,
        CASE WHEN line.seq IS NULL
            THEN line.count_den * unit.grams_den
            ELSE line.count_den * measure.amount_thousandths END AS den
    FROM line
    LEFT JOIN mass_unit AS unit ON unit.name = line.unit
    LEFT JOIN measure ON measure.food = line.food AND measure.seq = line.seq
);

-- One line meets each nutrient: its mass, and the value if there is one. The
-- mass of everything counts as a nutrient of 100 g per 100 g.
CREATE TEMP TABLE term AS
SELECT weighed.recipe, nutrient.number AS nutrient, weighed.grains, value.thousandths
FROM weighed JOIN nutrient
LEFT JOIN value ON value.food = weighed.food AND value.nutrient = nutrient.number
UNION ALL
SELECT recipe, 0, grains, 100000 FROM weighed;

INSERT INTO tally
SELECT recipe, nutrient, sum(grains IS NULL), sum(grains IS NOT NULL AND thousandths IS NULL)
FROM term GROUP BY recipe, nutrient;

INSERT INTO figure (owner, nutrient, kind, shares)
SELECT recipe.id, nutrient, kind, recipe.servings
FROM (SELECT DISTINCT recipe, nutrient FROM term) AS asked
JOIN (SELECT 'amount' AS kind UNION ALL SELECT 'mass')
JOIN recipe ON recipe.id = asked.recipe;

INSERT INTO part
WITH summed AS (
    SELECT recipe, nutrient, 'amount' AS kind,
        coalesce(sum(thousandths * (grains % 1000000)), 0) AS low,
        coalesce(sum(thousandths * (grains / 1000000)), 0) AS high
    FROM term GROUP BY recipe, nutrient
    UNION ALL
    SELECT recipe, nutrient, 'mass',
        coalesce(sum(100000 * (grains % 1000000)) FILTER (WHERE thousandths IS NOT NULL), 0),
        coalesce(sum(100000 * (grains / 1000000)) FILTER (WHERE thousandths IS NOT NULL), 0)
    FROM term GROUP BY recipe, nutrient
), place (place) AS (VALUES (0), (1), (2), (3), (4), (5))
SELECT figure.id, place, CASE place WHEN 0 THEN low WHEN 1 THEN high ELSE 0 END
FROM summed
JOIN figure ON figure.owner = summed.recipe
    AND figure.nutrient = summed.nutrient AND figure.kind = summed.kind
JOIN place;
