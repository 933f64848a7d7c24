-- Average = sum of planned servings × amount per serving, over planned meals.
-- All recipes are first brought to shares of 1/25200, which every number of
-- servings divides.
CREATE TEMP TABLE offered AS
SELECT week, recipe, sum(planned) * (25200 / recipe.servings) AS shares, count(*) AS times
FROM choice JOIN recipe ON recipe.id = choice.recipe
WHERE planned > 0
GROUP BY week, recipe;

INSERT INTO tally
SELECT offered.week, nutrient, sum(unweighed * times), sum(missing * times)
FROM offered JOIN tally ON tally.owner = offered.recipe
GROUP BY offered.week, nutrient;

INSERT INTO figure (owner, nutrient, kind, shares)
SELECT DISTINCT offered.week, figure.nutrient, figure.kind, week.meals * 25200
FROM offered
JOIN week ON week.id = offered.week
JOIN figure ON figure.owner = offered.recipe;

INSERT INTO part
SELECT average.id, digit.place, sum(digit.part * offered.shares)
FROM offered
JOIN figure AS served ON served.owner = offered.recipe
JOIN figure AS average ON average.owner = offered.week
    AND average.nutrient = served.nutrient AND average.kind = served.kind
JOIN digit ON digit.figure = served.id
GROUP BY average.id, digit.place;
