-- Carries from place to place until every part is below 1000000.
INSERT INTO digit
WITH RECURSIVE carried (figure, place, part, carry) AS (
    SELECT figure, 0, part % 1000000, part / 1000000
    FROM part WHERE place = 0 AND figure NOT IN (SELECT figure FROM digit)
    UNION ALL
    SELECT next.figure, next.place,
        (next.part + carried.carry) % 1000000, (next.part + carried.carry) / 1000000
    FROM carried
    JOIN part AS next ON next.figure = carried.figure AND next.place = carried.place + 1
)
SELECT figure, place, part, carry FROM carried;
