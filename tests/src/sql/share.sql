-- A nutrient's share of energy in hundredths of a percent: owner ?1's amount of
-- nutrient ?2 with ?3 kcal per gram, of owner ?4's energy (both are averages
-- over the same meals). The largest q with
-- q × energy <= 2 × 10000 × ?3 × amount, halved half up. The leading parts
-- (energy is always the larger number) give q to within one; the sign of the
-- difference, from the highest place down, decides. Past a million of one
-- place no lower place can turn the sign.
WITH RECURSIVE pair AS (
    SELECT amount.place, 20000 * ?3 * amount.part AS amount, energy.part AS energy
    FROM figure AS a
    JOIN figure AS e ON e.owner = ?4 AND e.nutrient = 208 AND e.kind = 'amount'
        AND e.shares = a.shares
    JOIN digit AS amount ON amount.figure = a.id
    JOIN digit AS energy ON energy.figure = e.id AND energy.place = amount.place
    WHERE a.owner = ?1 AND a.nutrient = ?2 AND a.kind = 'amount'
), top AS (
    SELECT max(place) AS place FROM pair WHERE energy > 0
), leading AS (
    SELECT sum(amount * weight) / sum(energy * weight) AS quotient
    FROM (
        SELECT amount, energy,
            CASE pair.place - top.place WHEN 0 THEN 1000000 WHEN -1 THEN 1 ELSE 0 END AS weight
        FROM pair JOIN top
    )
), candidate (quotient) AS (
    SELECT leading.quotient + step.column1
    FROM leading JOIN (VALUES (-1), (0), (1)) AS step
), difference (quotient, place, sign) AS (
    SELECT quotient, 6, 0 FROM candidate
    UNION ALL
    SELECT quotient, pair.place,
        max(-1000000, min(1000000, sign * 1000000 + amount - quotient * energy))
    FROM difference JOIN pair ON pair.place = difference.place - 1
)
SELECT (max(quotient) + 1) / 2 FROM difference WHERE place = 0 AND sign >= 0;
