-- Long division from the highest place down, of twice the figure in units of
-- the last printed decimal; (that + 1) / 2 then rounds half up.
INSERT INTO printed
WITH RECURSIVE scaled AS (
    SELECT figure.*,
        CASE WHEN figure.kind = 'amount' AND figure.nutrient > 0
            THEN nutrient.scale ELSE 1000000 END AS scale
    FROM figure LEFT JOIN nutrient ON nutrient.number = figure.nutrient
), division (figure, scale, place, quotient, remainder) AS (
    SELECT id, scale, 6, 0, 0 FROM scaled
    UNION ALL
    SELECT division.figure, scale, digit.place,
        quotient * 1000000 + (remainder * 1000000 + part * 2 * scale) / 5760000000000,
        (remainder * 1000000 + part * 2 * scale) % 5760000000000
    FROM division
    JOIN digit ON digit.figure = division.figure AND digit.place = division.place - 1
)
SELECT owner, nutrient, kind, scale, (quotient / shares + 1) / 2
FROM division JOIN figure ON figure.id = division.figure
WHERE place = 0;
